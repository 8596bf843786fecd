package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.prove.Check.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RestCheckTest {
  private final RestCheck check = new RestCheck(Printers.dunlin(), Map.of());

  private static EndstopReading reads(String name, boolean touched) {
    return new EndstopReading(name, touched, touched ? "on" : "off");
  }

  @Test
  void allOpen() {
    List<Check> checks =
        check.judge(List.of(reads("x_min", false), reads("z_min", false)), Set.of());
    assertThat(checks).extracting(Check::verdict).containsExactly(Verdict.PASS, Verdict.PASS);
  }

  @Test
  void triggeredAtRestPointsAtThePolarity() {
    List<Check> checks =
        check.judge(List.of(reads("x_min", true), reads("z_min", false)), Set.of());
    assertThat(checks.get(0).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(checks.get(0).path()).isEqualTo("endstops.xMin.inverted");
    assertThat(checks.get(0).advice()).contains("the opposite of false");
  }

  @Test
  void aParkedMachineTouchesWhatItIsSaidToTouch() {
    List<EndstopReading> readings = List.of(reads("x_min", false), reads("z_min", true));
    assertThat(check.judge(readings, Set.of("zMin"))).allMatch(c -> c.verdict() == Verdict.PASS);
    assertThat(check.judge(readings, Set.of("xMin"))).allMatch(c -> c.verdict() == Verdict.FAIL);
  }

  @Test
  void oneThatIsNotReportedFails() {
    List<Check> checks = check.judge(List.of(reads("x_min", false)), Set.of());
    assertThat(checks.get(1).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(checks.get(1).seen()).isEqualTo("not reported");
  }

  @Test
  void oneThatIsNotFittedOrUnknownIsAskedAbout() {
    List<Check> checks =
        check.judge(
            List.of(
                reads("x_min", false),
                reads("z_min", false),
                reads("x_max", true),
                reads("lid", false)),
            Set.of());
    assertThat(checks).hasSize(4);
    assertThat(checks.get(2).path()).isEqualTo("endstops.xMax");
    assertThat(checks.get(2).verdict()).isEqualTo(Verdict.UNSURE);
    assertThat(checks.get(3).advice()).contains("link.endstopNames").contains("'lid'");
  }

  @Test
  void aGuessIsMarkedAndWhatTheUserSaidIsNot() {
    List<EndstopReading> readings = List.of(reads("x_min", false), reads("z", false));
    assertThat(check.judge(readings, Set.of()).get(1).verdict()).isEqualTo(Verdict.UNSURE);
    RestCheck told = new RestCheck(Printers.dunlin(), Map.of("Z", "zMin"));
    assertThat(told.judge(readings, Set.of()).get(1).verdict()).isEqualTo(Verdict.PASS);
  }

  @Test
  void theReportedNameCanBeReadBackFromTheLine() {
    List<Check> checks = check.judge(List.of(reads("left lid (top)", true)), Set.of());
    assertThat(checks)
        .filteredOn(c -> c.verdict() == Verdict.UNSURE)
        .singleElement()
        .satisfies(c -> assertThat(RestCheck.reported(c)).contains("left lid (top)"));
    assertThat(checks)
        .filteredOn(c -> c.verdict() == Verdict.FAIL)
        .allSatisfy(c -> assertThat(RestCheck.reported(c)).isEmpty());
  }
}
