package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

/** The example table of RFC 7396, appendix A. */
class MergePatchTest {
  private final JsonMapper json = JsonMapper.shared();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "{\"a\":\"b\"} | {\"a\":\"c\"} | {\"a\":\"c\"}",
        "{\"a\":\"b\"} | {\"b\":\"c\"} | {\"a\":\"b\",\"b\":\"c\"}",
        "{\"a\":\"b\"} | {\"a\":null} | {}",
        "{\"a\":\"b\",\"b\":\"c\"} | {\"a\":null} | {\"b\":\"c\"}",
        "{\"a\":[\"b\"]} | {\"a\":\"c\"} | {\"a\":\"c\"}",
        "{\"a\":\"c\"} | {\"a\":[\"b\"]} | {\"a\":[\"b\"]}",
        "{\"a\":{\"b\":\"c\"}} | {\"a\":{\"b\":\"d\",\"c\":null}} | {\"a\":{\"b\":\"d\"}}",
        "{\"a\":[{\"b\":\"c\"}]} | {\"a\":[1]} | {\"a\":[1]}",
        "[\"a\",\"b\"] | [\"c\",\"d\"] | [\"c\",\"d\"]",
        "{\"a\":\"b\"} | [\"c\"] | [\"c\"]",
        "{\"a\":\"foo\"} | null | null",
        "{\"a\":\"foo\"} | \"bar\" | \"bar\"",
        "{\"e\":null} | {\"a\":1} | {\"e\":null,\"a\":1}",
        "[1,2] | {\"a\":\"b\",\"c\":null} | {\"a\":\"b\"}",
        "{} | {\"a\":{\"bb\":{\"ccc\":null}}} | {\"a\":{\"bb\":{}}}"
      })
  void followsTheExamplesOfTheStandard(String target, String patch, String result) {
    assertThat(MergePatch.apply(json.readTree(target), json.readTree(patch)))
        .isEqualTo(json.readTree(result));
  }
}
