package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Conditions after C17 6.10.1, and what becomes of names that nothing settles. */
class ConditionTest {
  private static State state(String before, String condition) {
    String text = before + "\n#if " + condition + "\n#define PROBE 1\n#endif\n";
    List<Setting> all =
        HeaderDocument.of("probe.h", text.getBytes(StandardCharsets.UTF_8)).settings();
    return all.get(all.size() - 1).state();
  }

  private static final String KNOWN =
      "#define ONE 1\n#define TWO 2\n#define EMPTY\n//#define OFF 1\n#define ID(x) x\n"
          + "#define BOTH ONE and TWO";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ONE", // 6.10.1p4
        "ONE + TWO * 3 == 7", // 6.5.5, 6.5.6
        "1 << 2 + 1 == 8", // 6.5.7 binds weaker than 6.5.6
        "1 | 2 ^ 3 & 2", // 6.5.10 to 6.5.12
        "-1 > 0u", // 6.3.1.8
        "0 ? 1/0 : 1", // 6.5.15
        "1 || 1/0", // 6.5.14
        "!(0 && 1/0)", // 6.5.13
        "defined ONE && defined(TWO)", // 6.10.1p1
        "!defined OFF", // a commented-out definition settles its name
        "OFF == 0",
        "ID(ID(TWO)) == 2",
        "'\\x41' == 'A'", // 6.4.4.4
        "'\\101' == 65",
        "0xFFFFFFFFFFFFFFFF == 18446744073709551615u",
        "2147483648 * 2 == 4294967296", // 6.10.1p4: 64 bits
        "true && !false",
        "ONE and not OFF", // ISO/IEC 14882:2017 5.5 [lex.digraph]
        "0 or BOTH",
        "TWO not_eq ONE",
        "(6 bitand 3) == 2 and (4 bitor 1) == 5",
        "(5 xor 1) == 4 and compl 0 == -1",
        "(2 > 1) == (ONE < TWO)"
      })
  void holds(String condition) {
    assertThat(state(KNOWN, condition)).isEqualTo(State.LIVE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "0",
        "ONE == TWO",
        "defined OFF",
        "EMPTY + 0",
        "1/0", // an error where it is evaluated
        "1 +", // breaks off
        "\"text\"",
        "1.5",
        "ONE = 1",
        "(1",
        ""
      })
  void doesNotHold(String condition) {
    assertThat(state(KNOWN, condition)).isEqualTo(State.DEAD);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "__AVR__",
        "defined(__AVR__)",
        "defined __AVR__ && ONE",
        "__GNUC__ > 4",
        "__AVR__ || 0",
        "!__AVR__",
        "__has_attribute(packed)",
        "__has_include(<outside.h>)",
        "OUTSIDE(1, 2) == 3",
        "__AVR__ ? 1 : 0"
      })
  void staysOpen(String condition) {
    assertThat(state(KNOWN, condition)).isEqualTo(State.OPEN);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "__AVR__ && 0; DEAD",
        "0 && __AVR__; DEAD",
        "__AVR__ || 1; LIVE",
        "1 || __AVR__; LIVE",
        "__AVR__ ? 2 : 2; LIVE",
        "defined(__AVR__) && ONE == TWO; DEAD"
      })
  void isSettledInSpiteOfAnUnknownName(String condition, State expected) {
    assertThat(state(KNOWN, condition)).isEqualTo(expected);
  }

  @Test
  void anOpenBranchLeavesSeveralMeanings() {
    String split = "#ifdef __X__\n#define A 1\n#else\n#define A 2\n#endif\n";
    assertThat(state(split, "defined A")).isEqualTo(State.LIVE);
    assertThat(state(split, "A == 1")).isEqualTo(State.OPEN);
    String same = "#ifdef __X__\n#define A 1\n#else\n#define A 1\n#endif\n";
    assertThat(state(same, "A == 1")).isEqualTo(State.LIVE);
    String maybe = "#ifdef __X__\n#define A 1\n#endif\n";
    assertThat(state(maybe, "defined A")).isEqualTo(State.OPEN);
  }

  @Test
  void aBranchThatStopsTheCompilerIsNoWayToGo() {
    String text = "#if defined __X__\n#define A 1\n#else\n#error no X\n#endif\n";
    assertThat(state(text, "defined A")).isEqualTo(State.LIVE);
  }

  @Test
  void elseAfterAnOpenConditionIsOpen() {
    List<Setting> all =
        HeaderDocument.of(
                "x.h",
                "#if __X__\n#define A 1\n#elif 0\n#define A 2\n#else\n#define A 3\n#endif\n"
                    .getBytes(StandardCharsets.UTF_8))
            .settings();
    assertThat(all).extracting(Setting::state).containsExactly(State.OPEN, State.DEAD, State.OPEN);
  }

  @Test
  void deepNestingIsRefusedNotRun() {
    String deep = "(".repeat(100_000) + "1" + ")".repeat(100_000);
    assertThat(state("", deep)).isEqualTo(State.DEAD);
    String nots = "!".repeat(100_000) + "1";
    assertThat(state("", nots)).isEqualTo(State.DEAD);
  }
}
