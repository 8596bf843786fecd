package dev.gantrywright.reference;

import dev.gantrywright.physics.EndstopLogic;
import dev.gantrywright.physics.EndstopLogic.Contact;
import dev.gantrywright.physics.EndstopLogic.Input;
import dev.gantrywright.physics.EndstopLogic.Level;
import dev.gantrywright.physics.EndstopLogic.Outcome;
import dev.gantrywright.physics.EndstopLogic.Sensor;

/** Group 9: endstop inputs. */
final class EndstopRows extends GroupRows {
  EndstopRows() {
    super("G09_endstop_safety");
    formula(
        "sw_level",
        EndstopLogic.class,
        row ->
            level(
                row,
                row.text("wiring").equals("pullup") ? Input.PULL_UP : Input.PULL_DOWN,
                Sensor.SWITCH));
    formula(
        "sens_level",
        EndstopLogic.class,
        row ->
            row.text("output").equals("NPN")
                ? level(row, Input.PULL_UP, Sensor.NPN)
                : level(row, Input.PULL_DOWN, Sensor.PNP));
    formula(
        "fail_safe",
        EndstopLogic.class,
        row ->
            EndstopLogic.of(contact(row), Input.PULL_UP, Sensor.SWITCH).brokenWireDetected()
                ? 1
                : 0);
  }

  private static Contact contact(HandbookRow row) {
    return Contact.valueOf(row.text("contact"));
  }

  private static double level(HandbookRow row, Input input, Sensor sensor) {
    Outcome outcome = EndstopLogic.of(contact(row), input, sensor);
    Level level =
        switch (row.text("state")) {
          case "idle" -> outcome.idle();
          case "hit" -> outcome.pressed();
          default -> outcome.broken().orElseThrow();
        };
    return level == Level.HIGH ? 1 : 0;
  }

  @Override
  protected Use fact(HandbookRow row) {
    return Use.none("wording and colours of standards: used in texts, not computed");
  }
}
