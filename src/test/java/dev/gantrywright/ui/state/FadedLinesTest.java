package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.FirmwareFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class FadedLinesTest {
  private static final String HEADER =
      """
      #define BOARD 1
      #if BOARD == 2
      // only there
      #define AMPS 600

      #else
      // here
      #define AMPS 800
      #endif
      #ifdef SOMEWHERE_ELSE
      #define MAYBE 1
      #endif
      #define LAST 1
      """;

  private final Map<Integer, String> faded =
      new FadedLines(
              FirmwareFolder.of(
                  Path.of("hum"),
                  Map.of("hum.h", HEADER.getBytes(StandardCharsets.UTF_8)),
                  Map.of()))
          .in("hum.h");

  @Test
  void aDeadBranchFadesWholeWithItsReason() {
    assertThat(faded.get(3)).startsWith("not compiled").contains("BOARD == 2");
    assertThat(faded).containsKeys(4, 5).containsEntry(5, faded.get(4));
  }

  @Test
  void whatTheCompilerSeesStaysAsItIs() {
    assertThat(faded).doesNotContainKeys(1, 2, 6, 7, 8, 9, 13);
  }

  @Test
  void aBranchThatDependsOnSomethingUnknownSaysSo() {
    assertThat(faded.get(11)).startsWith("not known").contains("SOMEWHERE_ELSE");
  }
}
