package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class WordListTest {
  @Test
  void wordsStandApartByBlanksAndQuotesHoldThemTogether() {
    assertThat(WordList.words("make \"out dir\"  TARGET={target}"))
        .containsExactly("make", "out dir", "TARGET={target}");
    assertThat(WordList.words("   ")).isEmpty();
  }

  @Test
  void namesAndValuesStandOneALine() {
    assertThat(WordList.map("x_min = xMin\n\nLANG=C\nbare"))
        .containsExactly(Map.entry("x_min", "xMin"), Map.entry("LANG", "C"), Map.entry("bare", ""));
    assertThat(WordList.typed(Map.of("a", "b"))).isEqualTo("a=b");
  }

  /** What is shown reads back as what was given. */
  @Property(tries = 500)
  void everyListReadsBack(@ForAll @Size(max = 6) List<String> words) {
    assertThat(WordList.words(WordList.typed(words))).isEqualTo(words);
  }
}
