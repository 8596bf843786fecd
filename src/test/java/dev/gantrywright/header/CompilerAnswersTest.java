package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a condition gets that asks for the compiler's abilities, as gcc 12.2.0 answers. */
class CompilerAnswersTest {
  @ParameterizedTest
  @CsvSource({
    "__has_attribute, packed, 1",
    "__has_attribute, __packed__, 1",
    "__has_attribute, ' packed ', 1",
    "__has_attribute, __packed, 0",
    "__has_attribute, feathered, 0",
    "__has_attribute, ____, 0",
    "__has_builtin, __builtin_expect, 1",
    "__has_builtin, __sync_synchronize, 1",
    "__has_builtin, __atomic_load, 1",
    "__has_builtin, expect, 0",
    "__has_c_attribute, fallthrough, 201904",
    "__has_c_attribute, __fallthrough__, 201904",
    "__has_c_attribute, packed, 0",
    "__has_c_attribute, gnu::packed, 1",
    "__has_c_attribute, gnu :: packed, 1",
    "__has_c_attribute, __gnu__::__packed__, 1",
    "__has_c_attribute, gnu::feathered, 0",
    "__has_c_attribute, bird::packed, 0",
  })
  void asTheCompilerSays(String query, String argument, long value) {
    assertThat(CompilerAnswers.answer(query, argument).bits()).isEqualTo(value);
  }
}
