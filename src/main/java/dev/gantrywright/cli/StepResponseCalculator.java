package dev.gantrywright.cli;

import dev.gantrywright.app.ThermalStudy;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.physics.Gains;
import dev.gantrywright.prove.StepResponse;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute step-response. */
@Command(
    name = "step-response",
    description =
        "A heater's process model and controller terms from a recorded step of its power.")
final class StepResponseCalculator extends Calculator {
  @Option(
      names = "--record",
      paramLabel = "FILE",
      required = true,
      description = "CSV with a heading, then seconds and degrees Celsius in each row.")
  Path record;

  @Option(
      names = "--power-step",
      paramLabel = "SHARE",
      required = true,
      description = "Share of full power that was switched on, above 0 up to 1.")
  double powerStep;

  @Override
  Answer answer() {
    return answer(read());
  }

  /**
   * What follows from a recording.
   *
   * @throws dev.gantrywright.physics.OutOfDomain when the readings have no step's shape
   */
  static Answer answer(StepResponse response) {
    ThermalStudy study = ThermalStudy.of(response);
    Answer answer =
        new Answer()
            .figure("gainKelvin", "gain at full power", study.model().gain(), "K")
            .figure("tauSeconds", "time constant", study.model().tauSeconds(), "s")
            .figure("deadSeconds", "dead time", study.model().deadSeconds(), "s")
            .figure("worstKelvin", "worst fit", study.worstKelvin(), "K")
            .truth("settled", "settled", response.settled());
    Map<String, Object> rules = new LinkedHashMap<>();
    study
        .rules()
        .forEach(
            (rule, gains) -> {
              rules.put(rule, json(gains));
              answer.line(
                  rule,
                  "P "
                      + Answer.sixDigits(gains.kc())
                      + " 1/K, I "
                      + Answer.sixDigits(gains.ki())
                      + " 1/(K s), D "
                      + Answer.sixDigits(gains.kd())
                      + " s/K");
            });
    answer.values().put("rules", rules);
    if (!response.settled()) {
      answer.line("mind", "the temperature was still rising: record for longer");
    }
    return answer.line("mind", "try them with somebody at the power switch; a heater can run away");
  }

  private static Map<String, Object> json(Gains gains) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("proportional", gains.kc());
    row.put("integral", gains.ki());
    row.put("derivative", gains.kd());
    return row;
  }

  private StepResponse read() {
    try {
      return StepResponse.ofCsv("", powerStep, Files.readString(record));
    } catch (IOException e) {
      throw new UsageProblem(
          "compute step-response: " + record + " cannot be read (" + IoReason.of(e) + ")", e);
    } catch (IllegalArgumentException e) {
      throw new UsageProblem("compute step-response: " + record + ": " + e.getMessage(), e);
    }
  }
}
