package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Definitions with their place and state, of a header and of those that it includes. */
class MacroViewTest {
  @TempDir private Path dir;
  private Path nest;

  @BeforeEach
  void twoHeaders() throws IOException {
    Files.createDirectories(dir.resolve("lib"));
    Files.writeString(dir.resolve("lib/egg.h"), "\n#define EGGS 4\n#define TWIGS 1\n");
    nest =
        Files.writeString(
            dir.resolve("nest.h"),
            """
            #include <egg.h>
            #undef TWIGS
            #define TWIGS  12   /* many */
            #if EGGS > 5
            #define CROWDED
            #endif
            #ifdef DUCK
            #define WET 1
            #endif
            #define LAY( n, ... )  lay( n )
            #define TWICE 1
            #define TWICE 2
            #error later
            """);
  }

  private MacroView.Table view(boolean open, String... defines) throws IOException {
    return new MacroView(List.of(defines), List.of(dir.resolve("lib")), open).of(nest);
  }

  private static List<String> words(MacroView.Table table) {
    return table.rows().stream()
        .map(
            r ->
                r.name() + " " + Path.of(r.file()).getFileName() + ":" + r.line() + " " + r.state())
        .toList();
  }

  @Test
  void aCompilersViewHasWhatIsInForceAtTheEnd() throws IOException {
    assertThat(words(view(false)))
        .containsExactly(
            "EGGS egg.h:2 LIVE",
            "LAY nest.h:10 LIVE",
            "TWICE nest.h:12 LIVE",
            "TWIGS nest.h:3 LIVE");
    assertThat(words(view(false, "DUCK")))
        .contains("DUCK (command line):1 LIVE", "WET nest.h:8 LIVE");
  }

  @Test
  void theOpenViewHasEveryDefinitionWithTheReason() throws IOException {
    MacroView.Table table = view(true);
    assertThat(words(table))
        .containsExactly(
            "CROWDED nest.h:5 DEAD",
            "EGGS egg.h:2 LIVE",
            "LAY nest.h:10 LIVE",
            "TWICE nest.h:11 LIVE",
            "TWICE nest.h:12 LIVE",
            "TWIGS egg.h:3 LIVE",
            "TWIGS nest.h:3 LIVE",
            "WET nest.h:8 OPEN");
    assertThat(table.rows().get(0).reason()).contains("EGGS > 5");
    assertThat(table.rows().get(7).reason()).contains("DUCK");
  }

  @Test
  void valuesAndParametersAreTheirs() throws IOException {
    List<MacroView.Row> rows = view(false).rows();
    assertThat(rows.get(0).value()).isEqualTo("4");
    assertThat(rows.get(0).parameters()).isNull();
    assertThat(rows.get(1).parameters()).containsExactly("n", "__VA_ARGS__");
    assertThat(rows.get(1).value()).isEqualTo("lay( n )");
    assertThat(rows.get(3).value()).isEqualTo("12");
    assertThat(rows.get(3).reason()).isEmpty();
  }

  @Test
  void whatWentWrongIsTold() throws IOException {
    assertThat(view(false).problems())
        .anySatisfy(
            problem -> {
              assertThat(problem.line()).isEqualTo(13);
              assertThat(problem.text()).contains("later");
            });
  }
}
