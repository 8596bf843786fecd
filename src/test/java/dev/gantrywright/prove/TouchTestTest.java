package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.practice.EndstopInput;
import dev.gantrywright.link.practice.EndstopInput.Contact;
import dev.gantrywright.link.practice.EndstopInput.Pull;
import dev.gantrywright.link.practice.EndstopInput.Sensor;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.prove.Sample.Validity;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class TouchTestTest {
  private static final Map<String, Boolean> BUILT =
      Map.of("xMin", false, "yMin", true, "zMin", true);

  @Test
  void allWorks() {
    TouchReport report = TracedPlover.with().touchTest(BUILT);
    assertThat(report.results()).extracting(TouchResult::verdict).containsOnly(TouchVerdict.WORKS);
    assertThat(report.passed()).isTrue();
    assertThat(report.matrix()).containsOnlyKeys("xMin", "yMin", "zMin");
  }

  @Test
  void invertedIsFoundAndTheRemedyTurnsItRound() {
    PracticeSetup plover = PracticeMachines.plover();
    PracticeSetup wrong =
        new PracticeSetup(
            plover.name(),
            plover.identity(),
            List.of(
                new EndstopInput("xMin", Contact.NC, Pull.UP, Sensor.SWITCH, true),
                plover.endstops().get(1),
                plover.endstops().get(2)),
            plover.built(),
            plover.heaters(),
            List.of(),
            List.of(),
            List.of());
    TouchReport report =
        new TracedPlover(wrong).touchTest(Map.of("xMin", true, "yMin", true, "zMin", true));
    TouchResult x = report.of("xMin");
    assertThat(x.verdict()).isEqualTo(TouchVerdict.INVERTED);
    assertThat(x.remedy()).contains(new TouchResult.Remedy("endstops.xMin.inverted", "false"));
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.WORKS);
    assertThat(report.passed()).isFalse();
  }

  @Test
  void swappedNamesBoth() {
    TouchReport report = TracedPlover.with("swapped:yMin:zMin").touchTest(BUILT);
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.SWAPPED);
    assertThat(report.of("yMin").other()).isEqualTo("zMin");
    assertThat(report.of("zMin").other()).isEqualTo("yMin");
    assertThat(report.of("zMin").advice()).startsWith("Switch the power off");
    assertThat(report.of("xMin").verdict()).isEqualTo(TouchVerdict.WORKS);
  }

  @Test
  void stuckAndDeadAreToldApart() {
    TouchReport report =
        TracedPlover.with("stuck:xMin:triggered", "stuck:yMin:open").touchTest(BUILT);
    assertThat(report.of("xMin").verdict()).isEqualTo(TouchVerdict.STUCK);
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.NEVER_CHANGES);
    assertThat(report.of("zMin").verdict()).isEqualTo(TouchVerdict.WORKS);
  }

  @Test
  void aWireOffANormallyClosedContactReadsTouched() {
    assertThat(TracedPlover.with("broken:xMin").touchTest(BUILT).of("xMin").verdict())
        .isEqualTo(TouchVerdict.STUCK);
  }

  @Test
  void twoOnOneInput() {
    TouchReport report = TracedPlover.with("shared:yMin:zMin").touchTest(BUILT);
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.SHARED);
    assertThat(report.of("yMin").other()).isEqualTo("zMin");
    assertThat(report.of("xMin").verdict()).isEqualTo(TouchVerdict.WORKS);
  }

  @Test
  void bounceBeyondASoundSwitch() {
    TouchReport report = TracedPlover.with("bounce:yMin:40").touchTest(BUILT);
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.BOUNCING);
    assertThat(report.of("yMin").longestBounceNanos())
        .isBetween(6 * TracedPlover.MS, 45 * TracedPlover.MS);
  }

  @Test
  void theBounceOfASoundSwitchIsForgiven() {
    assertThat(TracedPlover.with("bounce:yMin:3").touchTest(BUILT).passed()).isTrue();
  }

  @Test
  void noiseWhileOthersArePressed() {
    TouchReport report = TracedPlover.with("noise:xMin").touchTest(BUILT);
    assertThat(report.of("xMin").verdict()).isEqualTo(TouchVerdict.NOISY);
    assertThat(report.of("xMin").other()).isIn("yMin", "zMin");
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.WORKS);
  }

  @Test
  void promptsAndCanBeLeftEarly() {
    TouchTest test =
        new TouchTest(List.of("xMin", "yMin"), Map.of(), TouchTest.Patience.standard());
    assertThat(test.prompt()).contains("Hands off");
    assertThat(test.asked()).isEmpty();
    TracedPlover machine = TracedPlover.with();
    for (int i = 0; i < 20; i++) {
      test.add(machine.sample(20));
    }
    assertThat(test.asked()).contains("xMin");
    assertThat(test.prompt()).contains("xMin");
    test.skip();
    assertThat(test.asked()).contains("yMin");
    assertThat(test.report().of("xMin").verdict()).isEqualTo(TouchVerdict.NOT_TESTED);
    test.skip();
    assertThat(test.done()).isTrue();
  }

  @Test
  void staleSamplesCountForNothing() {
    TouchTest test = new TouchTest(List.of("xMin"), Map.of(), TouchTest.Patience.standard());
    for (int i = 0; i < 1000; i++) {
      test.add(new Sample(i * 10 * TracedPlover.MS, 0, Validity.STALE, Map.of("xMin", i % 2 == 0)));
    }
    assertThat(test.asked()).isEmpty();
  }

  @Test
  void anEndstopThatIsNeverStillDoesNotHoldTheOthersUp() {
    TouchTest test = new TouchTest(List.of("xMin"), Map.of(), TouchTest.Patience.standard());
    for (int i = 0; i < 2_100; i++) {
      test.add(new Sample(i * 10 * TracedPlover.MS, 0, Validity.VALID, Map.of("xMin", i % 2 == 0)));
    }
    assertThat(test.count() > 0 || test.asked().isPresent()).isTrue();
  }
}
