package dev.gantrywright.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class Utf8TextTest {
  @Test
  void textsStandBehindOneAnotherAsUtf8() {
    Utf8Text text = new Utf8Text().add("0.11 Ω, ").add("20 µm ").add("xx–🛠–yy", 2, 6).add("\n");
    assertThat(text).hasToString("0.11 Ω, 20 µm –🛠–\n");
    assertThat(text.bytes()).isEqualTo("0.11 Ω, 20 µm –🛠–\n".getBytes(StandardCharsets.UTF_8));
  }

  @Property
  void anyTextIsEncodedAsThePlatformDoes(@ForAll String text, @ForAll @IntRange(max = 5) int from) {
    int start = Math.min(from, text.length());
    assertThat(new Utf8Text().add("x").add(text, start, text.length()).bytes())
        .isEqualTo(("x" + text.substring(start)).getBytes(StandardCharsets.UTF_8));
  }

  @Property
  void wrappingLosesNothingButTheSpaceAtALinesEnd(
      @ForAll @CharRange(from = 'a', to = 'd') @Chars({' ', 'µ', '–'}) @StringLength(max = 90)
          String first,
      @ForAll @CharRange(from = 'a', to = 'd') @Chars({' ', 'µ', '–'}) @StringLength(max = 400)
          String second,
      @ForAll @IntRange(min = 1, max = 60) int room) {
    String all = first + second;
    List<String> lines =
        new Utf8Text().wrapped("  ", room, first, second).toString().lines().toList();
    assertThat(lines).allMatch(line -> line.startsWith("  ") && line.length() <= room + 2);
    String put = String.join("", lines.stream().map(line -> line.substring(2)).toList());
    assertThat(put.replace(" ", "")).isEqualTo(all.replace(" ", ""));
    // A word is broken only where it is longer than a line.
    int at = 0;
    for (String line : lines.subList(0, lines.size() - 1)) {
      String text = line.substring(2);
      at = all.indexOf(text, at) + text.length();
      assertThat(all.charAt(at) == ' ' || text.length() == room).isTrue();
    }
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
