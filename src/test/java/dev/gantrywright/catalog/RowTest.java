package dev.gantrywright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RowTest {
  private static Row row(String json) {
    return new Row("parts.json, parts row 3", PlainJson.object(json));
  }

  @Test
  void readsWhatIsThere() {
    Row row =
        row(
            """
            {"t": "word", "n": 1.5, "w": 7, "h": "0x08000000", "f": true, "l": [1, "0x10"],
             "d": [1, 2.5], "s": ["a", "b"], "m": {"25": 1, "50": 0.5}, "r": [{"t": "in"}]}
            """);
    assertThat(row.text("t")).isEqualTo("word");
    assertThat(row.text("x", "else")).isEqualTo("else");
    assertThat(row.number("n")).isEqualTo(1.5);
    assertThat(row.number("x", 2)).isEqualTo(2);
    assertThat(row.whole("w")).isEqualTo(7);
    assertThat(row.whole("h")).isEqualTo(0x08000000L);
    assertThat(row.whole("x", 9)).isEqualTo(9);
    assertThat(row.flag("f", false)).isTrue();
    assertThat(row.flag("x", true)).isTrue();
    assertThat(row.wholes("l")).containsExactly(1L, 16L);
    assertThat(row.numbers("d")).containsExactly(1.0, 2.5);
    assertThat(row.texts("s")).containsExactly("a", "b");
    assertThat(row.table("m")).containsEntry("25", 1.0).containsEntry("50", 0.5);
    assertThat(row.rows("r")).singleElement().extracting(r -> r.text("t")).isEqualTo("in");
    assertThat(row.child("m").number("50")).isEqualTo(0.5);
    assertThat(row.has("t")).isTrue();
    assertThat(row.has("x")).isFalse();
  }

  @Test
  void namesFileRowAndKeyOfWhatIsWrong() {
    Row row = row("{\"n\": \"many\", \"w\": 1.5, \"z\": null}");
    assertThatThrownBy(() -> row.text("x")).hasMessage("parts.json, parts row 3: lacks x");
    assertThatThrownBy(() -> row.text("z")).hasMessageContaining("lacks z");
    assertThatThrownBy(() -> row.number("n")).hasMessageContaining("n wants a number");
    assertThatThrownBy(() -> row.whole("n")).hasMessageContaining("n wants a whole number");
    assertThatThrownBy(() -> row.whole("w")).hasMessageContaining("w wants a whole number");
    assertThatThrownBy(() -> row.child("x")).hasMessageContaining("lacks x");
    assertThatThrownBy(() -> Row.all("absent.json", "parts"))
        .hasMessageContaining("absent.json: not among");
    assertThatThrownBy(() -> CurrentRule.of(row("{\"kind\": \"magic\"}")))
        .hasMessageContaining("unknown kind");
  }
}
