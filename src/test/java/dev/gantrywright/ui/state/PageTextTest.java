package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.RulePages;
import dev.gantrywright.rules.book.StandardBook;
import org.junit.jupiter.api.Test;

class PageTextTest {
  @Test
  void linesThatBelongTogetherAreOneParagraph() {
    assertThat(
            PageText.pieces(
                """
                # Title

                One line
                and `another`.

                ## Why
                - a **point**
                  that goes on
                - next

                ```c
                #define A 1
                ```
                See [the sheet](https://example.org/a).
                """))
        .containsExactly(
            new PageText.Piece(PageText.Kind.TEXT, "One line and another."),
            new PageText.Piece(PageText.Kind.HEADING, "Why"),
            new PageText.Piece(PageText.Kind.POINT, "a point that goes on"),
            new PageText.Piece(PageText.Kind.POINT, "next"),
            new PageText.Piece(PageText.Kind.CODE, "#define A 1"),
            new PageText.Piece(PageText.Kind.TEXT, "See the sheet (https://example.org/a)."));
  }

  @Test
  void everyRuleHasAPageThatReadsAsText() {
    for (Rule rule : StandardBook.open().rules()) {
      String page = RulePages.help(rule.family(), rule.slug()).orElseThrow();
      assertThat(PageText.pieces(page)).as(rule.id()).isNotEmpty();
      assertThat(PageText.pieces(page))
          .as(rule.id())
          .noneMatch(piece -> piece.words().contains("**") || piece.words().contains("```"));
    }
  }
}
