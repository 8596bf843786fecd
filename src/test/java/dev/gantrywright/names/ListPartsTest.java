package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import dev.gantrywright.names.ListParts.Form;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class ListPartsTest {
  private static List<String> texts(String value) {
    return ListParts.of(value).parts().stream().map(ListParts.Part::text).toList();
  }

  @Test
  void braceLists() {
    assertThat(texts("{ 80, 80,400 , 93 }")).containsExactly("80", "80", "400", "93");
    assertThat(texts("{ 80, }")).containsExactly("80");
    assertThat(texts("{ F(1, 2), \"a,b\", '}' }")).containsExactly("F(1, 2)", "\"a,b\"", "'}'");
  }

  @Test
  void commentsNameParts() {
    ListParts list = ListParts.of("{ /* X */ 80, 400 /* Z, the screw */ }");
    assertThat(list.parts()).extracting(ListParts.Part::note).containsExactly("X", "Z, the screw");
    assertThat(list.parts()).extracting(ListParts.Part::text).containsExactly("80", "400");
  }

  @Test
  void nestedListsAreRowsAndColumns() {
    ListParts list = ListParts.of("{ {0, 220}, {-2, 210} }");
    assertThat(list.parts()).extracting(ListParts.Part::row).containsExactly(0, 0, 1, 1);
    assertThat(list.parts()).extracting(ListParts.Part::column).containsExactly(0, 1, 0, 1);
    assertThat(list.nested()).isTrue();
    assertThat(FolderPlace.path(list, list.parts().get(2))).containsExactly(1, 0);
    assertThat(ListParts.of("{1, 2}").nested()).isFalse();
  }

  @Test
  void designators() {
    ListParts list = ListParts.of("{ .steps = 80, [AX_Y] = 90 }");
    assertThat(list.parts())
        .extracting(ListParts.Part::designator)
        .containsExactly(".steps", "[AX_Y]");
    assertThat(list.parts()).extracting(ListParts.Part::text).containsExactly("80", "90");
  }

  @Test
  void otherForms() {
    assertThat(ListParts.of("\"200x210x180\"").form()).isEqualTo(Form.PACKED);
    assertThat(texts("\"200 x 210 x 180 mm\"")).containsExactly("200", "210", "180");
    assertThat(ListParts.of("80, 80, 400").form()).isEqualTo(Form.COMMAS);
    assertThat(texts("(80, 81)")).containsExactly("80", "81");
    assertThat(texts("PER_AXIS(80, F(1, 2))")).containsExactly("80", "F(1, 2)");
    for (String single :
        List.of("80", "(80)", "\"Heron\"", "(-1)", "F(1, 2) + G(3, 4)", "\"v2\"")) {
      assertThat(ListParts.of(single).several()).as(single).isFalse();
    }
  }

  @Test
  void replacesOnePartOnly() {
    String value = "{ 80, /* y */ 81, 400 }";
    ListParts list = ListParts.of(value);
    assertThat(ListParts.with(value, list.parts().get(1), "90"))
        .isEqualTo("{ 80, /* y */ 90, 400 }");
  }

  @Property(tries = 2000)
  void neverFailsAndSpansFit(
      @ForAll
          @StringLength(max = 40)
          @Chars({'{', '}', ',', '(', ')', '"', '\'', '/', '*', '.', '=', '[', ' ', '8', 'x', '\\'})
          String value) {
    assertThatCode(() -> ListParts.of(value)).doesNotThrowAnyException();
    for (ListParts.Part part : ListParts.of(value).parts()) {
      assertThat(value.substring(part.start(), part.end()).strip()).isEqualTo(part.text());
    }
  }
}
