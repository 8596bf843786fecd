package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OpeningTest {
  private static final Path DEMO = Path.of("demo-profiles");

  @Test
  void aPrinterOpensWithEverythingThatItsProfileNames() throws Exception {
    OpenPrinter printer = new Opening().open(DEMO.resolve("heron.printer.json"));
    assertThat(printer.problems()).isEmpty();
    assertThat(printer.title()).isEqualTo("Heron");
    assertThat(printer.sheet().name()).isEqualTo("Fulmar M4");
    assertThat(printer.folder().named("STRIDE_PER_MM")).hasSize(1);
    assertThat(printer.names().entry("axes.x.stepsPerMm")).isPresent();
  }

  @Test
  void printersShareTheFolderThatTheyShare() throws Exception {
    Opening opening = new Opening();
    OpenPrinter heron = opening.open(DEMO.resolve("heron.printer.json"));
    OpenPrinter sandpiper = opening.open(DEMO.resolve("sandpiper.printer.json"));
    assertThat(sandpiper.folder()).isSameAs(heron.folder());
    assertThat(sandpiper.sheet()).isSameAs(heron.sheet());
  }

  @Test
  void aProfileNamesNoOtherComputer(@TempDir Path folder) throws Exception {
    PrinterProfile heron = ProfileStore.read(DEMO.resolve("heron.printer.json"));
    for (String path : new String[] {"//evil.example/s/x.json", "\\\\evil.example\\s\\x.json"}) {
      PrinterProfile lured = ProfileValues.with(heron, "board.sheet", path);
      OpenPrinter printer =
          new Opening()
              .open(folder.resolve("heron.printer.json"), lured, DEMO.resolve("rookery-2.3"));
      assertThat(printer.sheet()).isNull();
      assertThat(printer.problems()).first().asString().contains("is on another computer");
    }
  }

  @Test
  void aPartThatIsMissingIsOneLineAndTheRestOpens(@TempDir Path folder) throws Exception {
    PrinterProfile lost =
        ProfileValues.with(
            ProfileStore.read(DEMO.resolve("heron.printer.json")),
            "board.sheet",
            "lost.board.json");
    OpenPrinter printer =
        new Opening().open(folder.resolve("heron.printer.json"), lost, DEMO.resolve("rookery-2.3"));
    assertThat(printer.sheet()).isNull();
    assertThat(printer.folder()).isNotNull();
    assertThat(printer.problems())
        .hasSize(2)
        .allSatisfy(line -> assertThat(line).doesNotContain("\n"))
        .first()
        .asString()
        .endsWith("lost.board.json: no such file");
  }
}
