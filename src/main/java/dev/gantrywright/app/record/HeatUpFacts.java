package dev.gantrywright.app.record;

import dev.gantrywright.app.ThermalStudy;
import dev.gantrywright.physics.OutOfDomain;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import dev.gantrywright.record.Sha256;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import tools.jackson.databind.node.ObjectNode;

/** How a heater was heated up, what came of it, and which file keeps the readings. */
final class HeatUpFacts {
  private HeatUpFacts() {}

  /**
   * @param response at least one reading
   * @param stopped whether somebody ended it
   * @param readings the file that keeps them, beside the profile
   */
  static ObjectNode of(
      String port, ThermalRun run, StepResponse response, boolean stopped, Path readings) {
    ObjectNode facts = Facts.object();
    ProofFacts.port(facts, port);
    StepResponse.Point first = response.points().get(0);
    StepResponse.Point last = response.points().get(response.points().size() - 1);
    facts.put("heater", run.heater());
    facts.put("powerShare", run.powerStep());
    facts.put("limitCelsius", run.highestCelsius());
    facts.put(
        "ending", last.celsius() > run.highestCelsius() ? "limit" : stopped ? "stopped" : "time");
    facts.put("readings", response.points().size());
    facts.put("seconds", last.seconds());
    facts.put("firstCelsius", first.celsius());
    facts.put("lastCelsius", last.celsius());
    facts.put("settled", response.settled());
    facts.put("file", readings.getFileName().toString());
    facts.put("sha256", Sha256.of(response.csv().getBytes(StandardCharsets.UTF_8)));
    try {
      ThermalStudy study = ThermalStudy.of(response);
      ObjectNode model = facts.putObject("model");
      model.put("gainKelvin", study.model().gain());
      model.put("tauSeconds", study.model().tauSeconds());
      model.put("deadSeconds", study.model().deadSeconds());
      model.put("worstKelvin", study.worstKelvin());
    } catch (OutOfDomain noStep) {
      facts.put("noModel", noStep.getMessage());
    }
    return facts;
  }
}
