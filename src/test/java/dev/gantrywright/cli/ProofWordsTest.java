package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.prove.Check;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

class ProofWordsTest {
  @Test
  void eachVerdictIsOneWordAndTheColumnStaysStraight() {
    assertThat(Arrays.stream(Check.Verdict.values()).map(ProofJson::word))
        .containsExactly("pass  ", "fail  ", "unsure", "absent");
  }
}
