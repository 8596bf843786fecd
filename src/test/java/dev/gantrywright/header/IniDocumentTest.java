package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class IniDocumentTest {
  private static final String TEXT =
      """
      ; the workshop's build
      common = 1 ; note

      [nest]
      board = fulmar
      flags =
        -DONE
        ; a comment between
        -DTWO=2
      empty =
      [roost : nest]
      # more
      board: petrel   # second
      """;

  private static IniDocument read(String text) {
    return IniDocument.of("build.ini", text.getBytes(StandardCharsets.UTF_8));
  }

  private static String set(String text, String section, String key, String value) {
    FirmwareFolder folder =
        FirmwareFolder.of(
            Path.of("f"), Map.of("build.ini", text.getBytes(StandardCharsets.UTF_8)), Map.of());
    EditPlan plan = EditPlan.of(folder, List.of(new Change.SetKey(section, key, value, "")));
    assertThat(plan.outcomes().get(0)).isInstanceOf(Outcome.Applied.class);
    return new String(plan.result("build.ini"), StandardCharsets.UTF_8);
  }

  @Test
  void listsSectionsAndKeys() {
    IniDocument ini = read(TEXT);
    assertThat(ini.sections()).containsExactly("", "nest", "roost : nest");
    assertThat(ini.entries())
        .extracting(e -> e.section() + "/" + e.key() + "=" + e.value())
        .containsExactly(
            "/common=1",
            "nest/board=fulmar",
            "nest/flags=-DONE\n-DTWO=2",
            "nest/empty=",
            "roost : nest/board=petrel");
    assertThat(ini.entry("nest", "board").orElseThrow().line()).isEqualTo(5);
    assertThat(ini.problems()).isEmpty();
  }

  @Test
  void setsAValueAndNothingElse() {
    assertThat(set(TEXT, "nest", "board", "heron"))
        .isEqualTo(TEXT.replace("board = fulmar", "board = heron"));
    assertThat(set(TEXT, "roost : nest", "board", "x"))
        .isEqualTo(TEXT.replace("board: petrel   #", "board: x        #"));
    assertThat(set(TEXT, "nest", "empty", "7")).isEqualTo(TEXT.replace("empty =", "empty = 7"));
  }

  @Test
  void keepsTheColumnOfACommentWhereTheTextFits() {
    assertThat(set("[a]\nk = 1      ; note\n", "a", "k", "12345"))
        .isEqualTo("[a]\nk = 12345  ; note\n");
    assertThat(set("[a]\r\nk = 12345  # note\r\n", "a", "k", "1"))
        .isEqualTo("[a]\r\nk = 1      # note\r\n");
    assertThat(set("[a]\nk = 1  ; note", "a", "k", "longer than that"))
        .isEqualTo("[a]\nk = longer than that ; note");
    assertThat(set("[a]\nk =    ; note\n", "a", "k", "7")).isEqualTo("[a]\nk = 7  ; note\n");
    assertThat(set("[a]\nk = 1\t; note\n", "a", "k", "22")).isEqualTo("[a]\nk = 22\t; note\n");
    assertThat(set("[a]\nk = µ  ; note\n", "a", "k", "ab")).isEqualTo("[a]\nk = ab ; note\n");
  }

  @Test
  void setsAValueOfSeveralLines() {
    assertThat(set("[a]\r\nk = 1\r\n", "a", "k", "-DA\n-DB"))
        .isEqualTo("[a]\r\nk = -DA\r\n  -DB\r\n");
    assertThat(set(TEXT, "nest", "flags", "-DX\n-DY"))
        .contains("flags =\n  -DX\n  ; a comment between\n  -DY\nempty =");
    assertThat(set(TEXT, "nest", "flags", "-DX")).contains("flags =\n  -DX\nempty =");
    assertThat(set("[a]\nk = -DA    ; one\n    -DB=1 ; two\n", "a", "k", "-DA\n-DB=22"))
        .isEqualTo("[a]\nk = -DA    ; one\n    -DB=22 ; two\n");
  }

  @Test
  void addsAKeyToASectionThatHasNone() {
    assertThat(set("[a]\nk = 1\n\n[b]\nl = 2", "a", "m", "3"))
        .isEqualTo("[a]\nk = 1\nm = 3\n\n[b]\nl = 2");
  }

  @Test
  void namesBothChangesOfAConflictAndWhereItIs() {
    FirmwareFolder folder =
        FirmwareFolder.of(
            Path.of("f"), Map.of("build.ini", TEXT.getBytes(StandardCharsets.UTF_8)), Map.of());
    List<Outcome> outcomes =
        EditPlan.of(
                folder,
                List.of(
                    new Change.SetKey("nest", "board", "heron", "board.constant = heron"),
                    new Change.SetKey("roost : nest", "board", "gull", ""),
                    new Change.SetKey("nest", "board", "gull", "")))
            .outcomes();
    assertThat(outcomes.get(1)).isInstanceOf(Outcome.Applied.class);
    assertThat(outcomes.get(2))
        .isEqualTo(
            new Outcome.Refused(
                "change 3 ([nest] board = gull) conflicts with change 1 (board.constant = heron):"
                    + " both are about the key [nest] board at build.ini:5; change 1 stands"));
  }

  @Test
  void tellsWhatItCannotRead() {
    assertThat(read("[a\nnonsense\n").problems()).extracting(Problem::line).containsExactly(1, 2);
    assertThat(read("a\0b").problems()).hasSize(1);
  }
}
