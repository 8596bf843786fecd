package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeaderDocumentTest {
  private static HeaderDocument read(String text) {
    return HeaderDocument.of("perch.h", text.getBytes(StandardCharsets.UTF_8));
  }

  private static Setting only(String text) {
    List<Setting> settings = read(text).settings();
    assertThat(settings).hasSize(1);
    return settings.get(0);
  }

  @Test
  void readsValueFlagAndFunction() {
    List<Setting> all =
        read("#define WING_SPAN 12 // mm\n#define HAS_NEST\n#define TWICE(x) ((x) * 2)\n")
            .settings();
    assertThat(all)
        .extracting(Setting::name, Setting::kind, Setting::value)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("WING_SPAN", Setting.Kind.VALUE, "12"),
            org.assertj.core.groups.Tuple.tuple("HAS_NEST", Setting.Kind.FLAG, ""),
            org.assertj.core.groups.Tuple.tuple("TWICE", Setting.Kind.FUNCTION, "((x) * 2)"));
    assertThat(all.get(0).unit()).isEqualTo("mm");
  }

  @Test
  void readsCommentedOutDefinitions() {
    List<Setting> all =
        read("//#define A 1\n  // #define B 2 // note\n/* #define C 3 */\n/// text\n").settings();
    assertThat(all).extracting(Setting::name).containsExactly("A", "B", "C");
    assertThat(all).extracting(Setting::value).containsExactly("1", "2", "3");
    assertThat(all).noneMatch(Setting::on);
  }

  @Test
  void takesTheMarksOffEveryCommentBehindAValue() {
    assertThat(only("/* #define X 7 */ // note\n").comment()).isEqualTo("note");
    assertThat(only("/* #define X 7 *//* in mm */\n").comment()).isEqualTo("in mm");
    assertThat(only("/* #define X 7 */ /* a */ // b\n").comment()).isEqualTo("a\nb");
    assertThat(only("/*#define X*/\n").comment()).isEmpty();
    assertThat(only("#define X 7 /* a */ // b\n").comment()).isEqualTo("a\nb");
    assertThat(only("#define X 7 /* a *//* b */  /**< c */\n").comment()).isEqualTo("a\nb\nc");
    assertThat(only("#define X 7 // see /* the */ drawing\n").comment())
        .isEqualTo("see /* the */ drawing");
    assertThat(only("/* a */ /* b */\n#define X 7\n").comment()).isEqualTo("a\nb");
  }

  @Test
  void keepsSpansOfTheOriginalBytes() {
    String text = "  #  define  FEED /* a */ 12 /* b */ + 1   // end\n";
    Setting s = only(text);
    assertThat(s.value()).isEqualTo("12 + 1");
    assertThat(text.substring(s.valueSpan().start(), s.valueSpan().end()))
        .isEqualTo("12 /* b */ + 1");
    assertThat(text.substring(s.nameSpan().start(), s.nameSpan().end())).isEqualTo("FEED");
    assertThat(s.lineSpan()).isEqualTo(new Span(0, text.length() - 1));
  }

  @Test
  void tellsLiveDeadAndOpen() {
    List<Setting> all =
        read("#define MODE 2\n#if MODE == 2\n#define A 1\n#else\n#define A 2\n#endif\n"
                + "#ifdef __COMPILER__\n#define B 1\n#endif\n")
            .settings();
    assertThat(all)
        .extracting(Setting::state)
        .containsExactly(State.LIVE, State.LIVE, State.DEAD, State.OPEN);
    assertThat(all.get(2).reason()).contains("#else (perch.h:4) is not reached");
    assertThat(all.get(3).reason()).contains("__COMPILER__").contains("is open");
  }

  @Test
  void listsElementsOfABraceList() {
    String text = "#define STEPS { 80, 80.5 , MAX(1, 2), { 1, 2 } }\n";
    Setting s = only(text);
    assertThat(s.elements())
        .extracting(e -> text.substring(e.start(), e.end()))
        .containsExactly("80", "80.5", "MAX(1, 2)", "{ 1, 2 }");
  }

  @Test
  void findsHeadingsAndCommentBlocks() {
    Setting s =
        read("//=====\n// Motion\n//=====\n\n// How far it flies,\n// range 1..9\n"
                + "#define FAR 3 // km\n")
            .settings()
            .get(0);
    assertThat(s.section()).isEqualTo("Motion");
    assertThat(s.comment()).isEqualTo("How far it flies,\nrange 1..9\nkm");
    assertThat(s.range()).isEqualTo(new ValueRange(1, 9));
  }

  @Test
  void readsAConditionThatASpliceCutsOffAtTheEnd() {
    assertThat(read("#define A 1\n#if A == 12\\\n").settings()).hasSize(1);
    assertThat(read("#define A 12\\\n").settings().get(0).value()).isEqualTo("12");
  }
}
