package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.DialectFile;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProfileDialectTest {
  private static Dialect dialect(String link) {
    return ProfileDialect.of(Printers.parse("{\"format\": 1, \"link\": " + link + "}").link());
  }

  @Test
  void anEmptySectionIsTheStandard() {
    assertThat(dialect("{}")).isEqualTo(DialectFile.standard());
  }

  @Test
  void everyEntryCanBeReplaced() {
    Dialect own =
        dialect(
            """
            {"endstopQuery": "ends?", "identityQuery": "", "stop": "halt!", "triggeredWords": ["made"],
             "endstopNames": {"left": "xMin"}, "acknowledge": [], "replySeconds": 0.5,
             "lineNumbers": true, "settingWords": {"stepsPerMm": ["spm"]}, "usb": "0483:5740:7F"}
            """);
    assertThat(own.endstopQuery()).isEqualTo("ends?");
    assertThat(own.identityQuery()).isEmpty();
    assertThat(own.stop()).isEqualTo("halt!");
    assertThat(own.triggeredWords()).isEqualTo(List.of("made"));
    assertThat(own.openWords()).isEqualTo(DialectFile.standard().openWords());
    assertThat(own.endstopNames()).containsEntry("left", "xMin");
    assertThat(own.acknowledge()).isEmpty();
    assertThat(own.replySeconds()).isEqualTo(0.5);
    assertThat(own.lineNumbers()).isTrue();
    assertThat(own.settingWords()).containsOnlyKeys("stepsPerMm");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"replySeconds\": \"soon\"}|link.replySeconds",
        "{\"replySeconds\": 0}|link.replySeconds",
        "{\"acknowledge\": \"ok\"}|link.acknowledge",
        "{\"longestLine\": 3}|link.longestLine"
      })
  void aWrongEntryIsNamed(String link, String path) {
    assertThatThrownBy(() -> dialect(link))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(path)
        .hasMessageNotContaining("\n");
  }
}
