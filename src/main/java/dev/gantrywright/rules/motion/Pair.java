package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Shown;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;

/** Two axes whose motors must make the same distance a step. */
final class Pair {
  private Pair() {}

  /** Reports every fact of the second axis that differs from the first. */
  static void report(
      Sink sink, String firstName, Axis first, String secondName, Axis second, String so) {
    Map<String, Object> wanted = facts(first);
    Map<String, Object> found = facts(second);
    wanted.forEach(
        (fact, value) -> {
          Object other = found.get(fact);
          if (known(value, other) && !value.equals(other)) {
            String path = "axes." + secondName + "." + fact;
            sink.report(
                path,
                "found " + text(other) + ", " + firstName + " has " + text(value) + ": " + so,
                Remedy.review("Set " + text(value) + " as on " + firstName, path, value));
          }
        });
  }

  private static Map<String, Object> facts(Axis axis) {
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("stepsPerMm", axis.stepsPerMm());
    facts.put("motor.fullSteps", axis.motor().fullSteps());
    facts.put("driver.microsteps", axis.driver().microsteps());
    facts.put("drive.pitch", axis.drive().pitch());
    facts.put("drive.teeth", axis.drive().teeth());
    facts.put("drive.ratio", axis.drive().ratio());
    return facts;
  }

  private static String text(Object value) {
    return value instanceof Double number ? Shown.n(number) : String.valueOf(value);
  }
}
