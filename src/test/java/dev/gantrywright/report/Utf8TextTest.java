package dev.gantrywright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class Utf8TextTest {
  @Test
  void textsStandBehindOneAnotherAsUtf8() {
    Utf8Text text = new Utf8Text().add("0.11 Ω, ").add("20 µm ").add("xx–🛠–yy", 2, 6).add("\n");
    assertThat(text).hasToString("0.11 Ω, 20 µm –🛠–\n");
    assertThat(text.bytes()).isEqualTo("0.11 Ω, 20 µm –🛠–\n".getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aLongTextGrowsTheBufferAndClearingKeepsNothing() {
    String line = "nozzle °C ".repeat(10_000);
    Utf8Text text = new Utf8Text().add("a").add(line).add(line);
    assertThat(text).hasToString("a" + line + line);
    assertThat(text.clear().add("b")).hasToString("b");
    assertThat(text.bytes()).containsExactly('b');
  }
}
