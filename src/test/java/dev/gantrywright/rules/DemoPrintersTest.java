package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.rules.book.StandardBook;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DemoPrintersTest {
  private static final RuleBook BOOK = StandardBook.open();

  @ParameterizedTest
  @ValueSource(strings = {"sandpiper", "guillemot"})
  void aCleanPrinterGivesNoErrorAndNoWarning(String name) {
    assertThat(BOOK.check(Workshop.printer(name)))
        .filteredOn(finding -> finding.level() != Level.NOTE)
        .isEmpty();
  }

  @Test
  void theFivePlantedMistakesAreFoundWithARemedyEach() throws Exception {
    CheckInput heron = Workshop.printer("heron");
    List<Finding> errors =
        BOOK.check(heron).stream().filter(f -> f.level() == Level.ERROR).toList();
    assertThat(errors)
        .extracting(Finding::path)
        .contains(
            "board.target",
            "serial.port",
            "axes.x.stepsPerMm",
            "endstops.zMin.inverted",
            "axes.y.homing.end");
    assertThat(errors)
        .filteredOn(f -> !f.slug().equals("port-shares-driver-uart"))
        .allMatch(f -> f.remedies().get(0).applicable());
    CheckInput fixed = heron;
    for (Finding error : errors) {
      if (error.remedies().get(0).applicable()) {
        fixed = Remedies.apply(fixed, error.remedies().get(0));
      }
    }
    assertThat(BOOK.check(fixed)).filteredOn(f -> f.level() != Level.NOTE).isEmpty();
  }

  @Test
  void theEvidenceSaysWhatExplainsTheRatio() {
    assertThat(BOOK.check(Workshop.printer("heron")))
        .filteredOn(f -> f.path().equals("axes.x.stepsPerMm"))
        .singleElement()
        .extracting(Finding::evidence)
        .asString()
        .startsWith("found 160, the drive gives 80: twice, as 32 microsteps for 16 would");
  }
}
