package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;
import dev.gantrywright.physics.EndstopLogic;
import java.util.Optional;

/** What an endstop of the profile puts on its input. */
final class Levels {
  private Levels() {}

  /** What holds the input: the stated pull, or the part's own pull-up where that is on. */
  static InputPull pull(Endstop endstop) {
    if (endstop.input() != null && endstop.input() != InputPull.NONE) {
      return endstop.input();
    }
    return Boolean.TRUE.equals(endstop.pullUp()) ? InputPull.PULL_UP : InputPull.NONE;
  }

  /** The levels at rest and when touched; empty where a fact is missing or the input floats. */
  static Optional<EndstopLogic.Outcome> of(Endstop endstop) {
    InputPull pull = pull(endstop);
    if (endstop.contact() == null || pull == InputPull.NONE) {
      return Optional.empty();
    }
    SensorKind sensor = endstop.sensor() == null ? SensorKind.SWITCH : endstop.sensor();
    return Optional.of(
            EndstopLogic.of(
                endstop.contact() == Contact.NO ? EndstopLogic.Contact.NO : EndstopLogic.Contact.NC,
                switch (pull) {
                  case PULL_UP -> EndstopLogic.Input.PULL_UP;
                  case PULL_DOWN -> EndstopLogic.Input.PULL_DOWN;
                  case DRIVEN, NONE -> EndstopLogic.Input.DRIVEN;
                },
                switch (sensor) {
                  case SWITCH -> EndstopLogic.Sensor.SWITCH;
                  case NPN -> EndstopLogic.Sensor.NPN;
                  case PNP -> EndstopLogic.Sensor.PNP;
                }))
        .filter(EndstopLogic.Outcome::tells);
  }

  /** Contact, sensor and pull in words. */
  static String words(Endstop endstop) {
    String sensor = endstop.sensor() == null ? "switch" : endstop.sensor().word();
    return endstop.contact().word() + " " + sensor + " on " + pull(endstop).word();
  }

  static boolean fitted(Endstop endstop) {
    return Boolean.TRUE.equals(endstop.fitted());
  }

  static boolean threeWire(Endstop endstop) {
    return endstop.sensor() == SensorKind.NPN || endstop.sensor() == SensorKind.PNP;
  }
}
