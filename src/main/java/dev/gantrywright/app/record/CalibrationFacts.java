package dev.gantrywright.app.record;

import dev.gantrywright.app.TravelStudy;
import dev.gantrywright.prove.TravelRuns;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How a steps/mm value was measured. */
final class CalibrationFacts {
  private CalibrationFacts() {}

  static ObjectNode of(TravelRuns runs, double current, TravelStudy study) {
    ObjectNode facts = Facts.object();
    facts.put("path", study.path());
    facts.put("current", current);
    facts.put("commandedMm", runs.commandedMm());
    ArrayNode measured = facts.putArray("measuredMm");
    runs.measuredMm().forEach(measured::add);
    facts.put("readingErrorMm", runs.readingErrorMm());
    facts.put("stepsPerMm", study.calibration().stepsPerMm());
    facts.put("plusMinus", study.calibration().plusMinus());
    Facts.texts(facts, "warnings", study.warnings());
    return facts;
  }
}
