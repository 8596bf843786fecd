package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** ISO/IEC 14882:2017 5.13.5: between the delimiters of a raw string nothing is a directive. */
class RawStringTest {
  private static List<String> settings(String text) {
    return HeaderDocument.of("nest.hpp", text.getBytes(StandardCharsets.UTF_8)).settings().stream()
        .map(s -> s.name() + "=" + s.value())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"R", "LR", "uR", "UR", "u8R"})
  void aDirectiveInsideIsText(String prefix) {
    assertThat(settings("auto t = " + prefix + "\"(\n#define A 1\n)\"; // x\n#define B 2\n"))
        .containsExactly("B=2");
    assertThat(
            settings("auto t = " + prefix + "\"nest(\n)\" )nes\" )nesx\"\n#define A 1\n)nest\";\n"))
        .isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"xR", "u9R", "x8R", "u8xR", "R2"})
  void anotherNameBeforeTheQuoteIsNoPrefix(String prefix) {
    assertThat(settings("auto t = " + prefix + "\"(\n#define A 1\n)\";\n")).containsExactly("A=1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"a b", "a\\", "a)", "12345678901234567"})
  void whatCannotBeADelimiterMakesItNone(String delimiter) {
    assertThat(settings("auto t = R\"" + delimiter + "(\n#define A 1\n)" + delimiter + "\";\n"))
        .containsExactly("A=1");
  }

  @Test
  void aDelimiterMayHaveSixteenCharacters() {
    String longest = "1234567890123456";
    assertThat(settings("auto t = R\"" + longest + "(\n#define A 1\n)" + longest + "\";\n"))
        .isEmpty();
  }

  @Test
  void oneThatIsNeverClosedTakesTheRest() {
    assertThat(settings("#define A 1\nauto t = R\"(\n#define B 2\n")).containsExactly("A=1");
  }

  @Test
  void inADirectiveItCannotLeaveTheLine() {
    assertThat(settings("#define A R\"(text)\" // note\n#define B 2\n"))
        .containsExactly("A=R\"(text)\"", "B=2");
    assertThat(settings("#define A R\"(// text\n#define B 2\n")).contains("B=2");
  }
}
