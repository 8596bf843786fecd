package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The quick way from a line's words to a listing's, and where it hands over to the careful one. */
class ByteSinkTest {
  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String written(ByteSink sink) {
    return new String(sink.toArray(), StandardCharsets.ISO_8859_1);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      value = {
        "`12`, ` 12`",
        "`  12  `, ` 12`",
        "`a \t  b`, ` a b`",
        "`a/b`, ` a/b`",
        "`a /`, ` a /`",
        "`a // words`, ` a`",
        "`a /* words */`, ` a`",
        "`a /* words */  `, ` a`",
        "`a /* words`, ` a`",
        "``, ` `",
        "`   `, ` `",
      })
  void aRunOfBlanksIsOneAndAClosingCommentNone(String line, String listed) {
    ByteSink sink = new ByteSink(0);
    sink.latin1("#define X");
    assertThat(sink.addWords(bytes(line), 0, line.length())).isTrue();
    assertThat(written(sink)).isEqualTo("#define X" + listed);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a /* words */ b",
        "\"a\"",
        "'a'",
        "a \\\n b",
        "#a",
        "a /\\\n/ words",
        "a /*/ b */ c"
      })
  void whatAsksForACloserLookIsLeftAlone(String line) {
    ByteSink sink = new ByteSink(0);
    sink.latin1("#define X");
    assertThat(sink.addWords(bytes(line), 0, line.length())).isFalse();
    assertThat(written(sink)).isEqualTo("#define X");
  }

  @Test
  void itGrowsInEveryWayOfAdding() {
    String long64 = "0123456789abcdef".repeat(4);
    ByteSink sink = new ByteSink(64);
    sink.add(bytes(long64), 0, 64);
    sink.add('!');
    sink.addWords(bytes(long64.repeat(9)), 0, 64 * 9);
    sink.add(bytes("?" + long64.repeat(30)), 1, 1 + 64 * 30);
    sink.latin1(long64);
    assertThat(written(sink))
        .isEqualTo(long64 + "! " + long64.repeat(9) + long64.repeat(30) + long64);
    assertThat(sink.size()).isEqualTo(64 * 41 + 2);
  }
}
