package dev.gantrywright.cli;

import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.machine.PrinterProfile;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Whether what is asked of the practice board is there in the printer: a fault on an endstop that
 * it does not have would do nothing, and prove nothing.
 */
final class PracticeFit {
  private static final Pattern ENDSTOP = Pattern.compile("endstops\\.([^.]+)\\.inverted");
  private static final Pattern AXIS =
      Pattern.compile("axes\\.([^.]+)\\.(stepsPerMm|maxSpeed|acceleration|driver\\.current)");

  private final PrinterProfile profile;
  private final Set<String> ends = new TreeSet<>();

  PracticeFit(PrinterProfile profile) {
    this.profile = profile;
    profile
        .endstops()
        .forEach(
            (end, endstop) -> {
              if (Boolean.TRUE.equals(endstop.fitted())) {
                ends.add(end);
              }
            });
  }

  /** Refuses a fault of an endstop or an axis that the printer does not have. */
  void faults(List<Fault> faults) {
    for (Fault fault : faults) {
      if (fault instanceof Fault.Stored stored) {
        axis("--fault", stored.axis());
      } else {
        of(fault).forEach(end -> end("--fault", end));
      }
    }
  }

  private static List<String> of(Fault fault) {
    if (fault instanceof Fault.Stuck one) {
      return List.of(one.endstop());
    }
    if (fault instanceof Fault.Broken one) {
      return List.of(one.endstop());
    }
    if (fault instanceof Fault.Bounce one) {
      return List.of(one.endstop());
    }
    if (fault instanceof Fault.Noise one) {
      return List.of(one.endstop());
    }
    if (fault instanceof Fault.Swapped two) {
      return List.of(two.one(), two.other());
    }
    return fault instanceof Fault.Shared two ? List.of(two.one(), two.other()) : List.of();
  }

  /** Refuses ends that are not fitted. */
  void touched(List<String> touched) {
    touched.forEach(end -> end("--touched", end));
  }

  /** Refuses a path that the practice board's firmware does not have. */
  void built(Map<String, String> built) {
    for (String path : built.keySet()) {
      Matcher endstop = ENDSTOP.matcher(path);
      Matcher axis = AXIS.matcher(path);
      if (endstop.matches()) {
        end("--built", endstop.group(1));
      } else if (axis.matches()) {
        axis("--built", axis.group(1));
      } else if (!path.equals("name") && !path.split("\\.", 2)[0].equals("identity")) {
        throw new UsageProblem(
            "--built: '"
                + path
                + "' is nothing that the practice board's firmware holds; write for example"
                + " endstops.xMin.inverted=true or axes.x.stepsPerMm=82");
      }
    }
  }

  private void end(String option, String end) {
    if (!ends.contains(end)) {
      throw new UsageProblem(
          option
              + ": the printer has no fitted endstop '"
              + end
              + "'; it has "
              + (ends.isEmpty() ? "none" : String.join(", ", ends)));
    }
  }

  private void axis(String option, String axis) {
    if (profile.axes().keySet().stream().noneMatch(axis::equalsIgnoreCase)) {
      throw new UsageProblem(
          option
              + ": the printer has no axis '"
              + axis
              + "'; it has "
              + (profile.axes().isEmpty() ? "none" : String.join(", ", profile.axes().keySet())));
    }
  }
}
