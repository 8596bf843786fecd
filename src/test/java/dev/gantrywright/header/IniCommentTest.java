package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class IniCommentTest {
  private static IniDocument.Entry key(String text, String name) {
    IniDocument document = IniDocument.of("perch.ini", text.getBytes(StandardCharsets.UTF_8));
    return document.entries().stream().filter(e -> e.key().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void theCommentBehindAValueSaysItsRangeAndUnit() {
    IniDocument.Entry key = key("[build]\nrate = 250 ; mm/s (10 to 300)\n", "rate");
    assertThat(key.value()).isEqualTo("250");
    assertThat(key.unit()).isEqualTo("mm/s");
    assertThat(key.range().min()).isEqualTo(10);
    assertThat(key.range().max()).isEqualTo(300);
    assertThat(key.choices()).isEmpty();
  }

  @Test
  void theCommentRightAboveAKeySpeaksOfIt() {
    IniDocument.Entry key = key("; how it answers\n# one of 1, 2, 4\nwidth = 2\n", "width");
    assertThat(key.choices()).containsExactly("1", "2", "4");
  }

  @Test
  void aBlankLineAHeadingOrAnotherKeyStandsBetween() {
    assertThat(key("; range 1 to 4\n\nwidth = 2\n", "width").range()).isNull();
    assertThat(key("; range 1 to 4\n[build]\nwidth = 2\n", "width").range()).isNull();
    assertThat(key("; range 1 to 4\nother = 1\nwidth = 2\n", "width").range()).isNull();
    assertThat(key("; range 1 to 4\nother = 1\nwidth = 2\n", "other").range()).isNotNull();
  }

  @Test
  void theCommentBehindCountsBeforeTheOneAbove() {
    IniDocument.Entry key = key("; range 1 to 4\nwidth = 2 ; range 1 to 9\n", "width");
    assertThat(key.range().max()).isEqualTo(9);
  }
}
