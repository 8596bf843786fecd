package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts as C writes them (C17 6.4.5, 6.4.4.4). */
class StringLiteralTest {
  @Test
  void whatALiteralMustEscapeIsEscaped() {
    assertThat(StringLiteral.of("a\"b\\c\n\r\t\u0001\u001f\u007f9"))
        .isEqualTo("\"a\\\"b\\\\c\\n\\r\\t\\001\\037\\1779\"");
    assertThat(StringLiteral.of("")).isEqualTo("\"\"");
    assertThat(StringLiteral.of(" ~µ")).isEqualTo("\" ~µ\"");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "Heron", "two \"words\"", "back\\slash", "a\nb\tc\rd", "\u0001" + "7", "\\\""})
  void aTextComesBack(String text) {
    assertThat(StringLiteral.text(StringLiteral.of(text))).isEqualTo(text);
  }

  @Test
  void everyEscapeIsRead() {
    assertThat(StringLiteral.text("\"\\a\\b\\t\\n\\v\\f\\r\\e\\E\\?\\'\""))
        .isEqualTo("\u0007\b\t\n\u000b\f\r\u001b\u001b?'");
    assertThat(StringLiteral.text("\"\\x41\\101\\1019\\u0041\\U00000041\\7z\""))
        .isEqualTo("AAA9AA\u0007z");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\"", "a", "\"a", "a\"", "\"a\" \"b\"", "\"a\\\"", "L\"a\"", "'a'", ""})
  void whatIsNoSinglePlainLiteralHasNoText(String literal) {
    assertThat(StringLiteral.text(literal)).isNull();
  }
}
