package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.DialectFile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.prove.Check.Verdict;
import dev.gantrywright.prove.StoredSettings.Value;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SettingsCheckTest {
  private final SettingsCheck check = new SettingsCheck(Printers.dunlin(), DialectFile.standard());
  private final Map<String, Value> stored = new HashMap<>();

  SettingsCheckTest() {
    stored.put("axes.x.stepsPerMm", new Value(80, 2));
    stored.put("axes.x.maxSpeed", new Value(200, 1));
    stored.put("axes.x.acceleration", new Value(1500, 0));
    stored.put("axes.x.driver.current", new Value(0.8, 1));
    stored.put("axes.z.stepsPerMm", new Value(400, 2));
    stored.put("axes.z.maxSpeed", new Value(12, 0));
    stored.put("axes.z.acceleration", new Value(100, 0));
  }

  private Check of(String path) {
    return check.judge(stored).stream()
        .filter(c -> c.path().equals(path))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void agreesAndHasNothingToSend() {
    assertThat(check.judge(stored)).hasSize(7).allMatch(c -> c.verdict() == Verdict.PASS);
    assertThat(check.linesToSend(stored)).isEmpty();
  }

  @Test
  void aStoredValueThatDiffersIsExplainedWithTheLinesToSend() {
    stored.put("axes.x.stepsPerMm", new Value(160, 2));
    Check x = of("axes.x.stepsPerMm");
    assertThat(x.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(x.advice()).isEqualTo("2.0000 of the profile's value");
    assertThat(check.explanation()).contains("overrides").contains("M502 then M500");
    assertThat(check.linesToSend(stored)).isEqualTo(List.of("M92 X80", "M500"));
  }

  @Test
  void otherUnitsAgreeToo() {
    stored.put("axes.x.maxSpeed", new Value(12_000, 0));
    stored.put("axes.x.driver.current", new Value(800, 0));
    assertThat(of("axes.x.maxSpeed").verdict()).isEqualTo(Verdict.PASS);
    assertThat(of("axes.x.maxSpeed").seen()).isEqualTo("12000 (in mm/min)");
    assertThat(of("axes.x.driver.current").seen()).isEqualTo("800 (in mA)");
    stored.put("axes.x.driver.current", new Value(900, 0));
    assertThat(of("axes.x.driver.current").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(check.linesToSend(stored)).containsExactly("M906 X800", "M500");
  }

  @Test
  void aCurrentIsSentInTheUnitThatTheOtherAxesShowOrNotAtAll() throws Exception {
    SettingsCheck sandpiper =
        new SettingsCheck(
            ProfileStore.read(Path.of("demo-profiles/sandpiper.printer.json")),
            DialectFile.standard());
    Map<String, Value> told = new HashMap<>();
    told.put("axes.x.driver.current", new Value(0.5, 1));
    told.put("axes.y.driver.current", new Value(900, 0));
    assertThat(sandpiper.linesToSend(told)).containsExactly("M906 X900", "M500");
    told.put("axes.x.driver.current", new Value(20, 0));
    told.put("axes.y.driver.current", new Value(30, 0));
    assertThat(sandpiper.linesToSend(told)).as("nothing tells A from mA").isEmpty();
  }

  @Test
  void roundingInTheReportIsNoDifference() {
    stored.put("axes.z.stepsPerMm", new Value(400.4, 0));
    assertThat(of("axes.z.stepsPerMm").verdict()).isEqualTo(Verdict.PASS);
    stored.put("axes.z.stepsPerMm", new Value(400.4, 1));
    assertThat(of("axes.z.stepsPerMm").verdict()).isEqualTo(Verdict.FAIL);
  }

  @Test
  void whatIsNotReportedIsNeitherRightNorWrong() {
    stored.remove("axes.z.acceleration");
    assertThat(of("axes.z.acceleration").verdict()).isEqualTo(Verdict.NOT_REPORTED);
    assertThat(check.linesToSend(stored)).isEmpty();
  }
}
