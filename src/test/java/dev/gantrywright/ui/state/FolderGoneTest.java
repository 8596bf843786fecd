package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the window's Check says where the firmware folder of the profile is not there. */
class FolderGoneTest {
  private final Inspection inspection =
      new RuleInspector(StandardBook::open, Catalog::shipped).follow();

  private List<MarginNote> notes(OpenPrinter printer) {
    return inspection.inspect(printer).stream()
        .filter(note -> note.slug().equals("folder-not-open"))
        .toList();
  }

  @Test
  void theNoteStandsAtTheFieldAndFollowsTheEdit(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("guillemot.printer.json");
    Files.copy(Path.of("demo-profiles/guillemot.printer.json"), file);
    OpenPrinter printer = new Opening().open(file);
    assertThat(notes(printer))
        .singleElement()
        .satisfies(
            note -> {
              assertThat(note.path()).isEqualTo("build.folder");
              assertThat(note.gravity()).isEqualTo(Gravity.WARNING);
              assertThat(note.fixes())
                  .singleElement()
                  .extracting("safety")
                  .hasToString("SHOW_ONLY");
            });
    OpenPrinter emptied =
        printer.with(ProfileValues.with(printer.profile(), "build.folder", null), printer.names());
    assertThat(notes(emptied)).isEmpty();
    assertThat(notes(new Opening().open(Path.of("demo-profiles/guillemot.printer.json"))))
        .isEmpty();
  }
}
