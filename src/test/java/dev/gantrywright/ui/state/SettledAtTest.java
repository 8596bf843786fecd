package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettledAtTest {
  @ParameterizedTest
  @CsvSource({
    "axes.x.stepsPerMm,   steps-disagree-with-drive,  Motion,                    DESCRIBE",
    "board.target,        target-for-other-family,    Board and microcontroller, DESCRIBE",
    "build.names,         macro-moved-since-map,      Firmware folder,           WRITE",
    "config/nest.h:14,    folder-has-problem,         Firmware folder,           WRITE",
    "build.command,       command-ignores-target,     Board and microcontroller, BUILD",
    "build.image.bytes,   image-exceeds-flash,        Board and microcontroller, BUILD",
    "build.image.address, offset-beyond-flash,        Board and microcontroller, LOAD",
    "link.stop,           stop-command-empty,         Power and safety,          PROVE"
  })
  void everyFindingHasTheStageAtWhichItIsSettled(
      String path, String slug, String family, Stage stage) {
    MarginNote note =
        new MarginNote("GW-X000", slug, family, Gravity.NOTE, path, path, "", "", List.of());
    assertThat(SettledAt.of(note)).isEqualTo(stage);
  }
}
