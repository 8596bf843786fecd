package dev.gantrywright.rules.motion;

import static dev.gantrywright.rules.Shown.n;

import dev.gantrywright.catalog.Belt;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Drive;
import dev.gantrywright.machine.DriveKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Which single wrong fact would explain a ratio between stated and computed steps/mm. */
final class Slip {
  // Narrow enough that neighbouring tooth counts of up to 100 teeth stay apart.
  private static final double CLOSE = 0.004;
  private static final List<Double> LEADS =
      List.of(1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 8.0, 10.0, 12.0, 16.0);

  private final double ratio;
  private final List<String> causes = new ArrayList<>();

  private Slip(double ratio) {
    this.ratio = ratio;
  }

  /**
   * The ratio in words and at most two single slips that would make it.
   *
   * @param ratio stated over computed
   */
  static String explain(double ratio, Axis axis, Catalog catalog) {
    Slip slip = new Slip(ratio);
    slip.microsteps(axis.driver().microsteps());
    slip.fullSteps(axis.motor().fullSteps());
    slip.drive(axis.drive(), catalog);
    String size = size(ratio);
    if (slip.causes.isEmpty()) {
      return size + ", which no single slip of microsteps, motor or drive explains";
    }
    String first = size + ", as " + slip.causes.get(0) + " would";
    return slip.causes.size() == 1 ? first : first + ", or " + slip.causes.get(1);
  }

  private void microsteps(int stated) {
    for (int micro = 1; micro <= 256; micro *= 2) {
      if (explains((double) micro / stated)) {
        causes.add(micro + " microsteps for " + stated);
      }
    }
  }

  private void fullSteps(int stated) {
    offer(400.0 / stated, "a 0.9° motor");
    offer(200.0 / stated, "a 1.8° motor");
  }

  private void drive(Drive drive, Catalog catalog) {
    if (drive.ratio() != null && drive.ratio() != 1) {
      offer(1 / drive.ratio(), "leaving out the gear ratio of " + n(drive.ratio()));
      offer(1 / drive.ratio() / drive.ratio(), "a gear ratio turned upside down");
    }
    double geared = Math.rint(ratio * 2) / 2;
    if (drive.ratio() == null && drive.kind() == DriveKind.GEAR && geared >= 2 && geared <= 10) {
      offer(geared, "a gear ratio of " + n(geared) + " that is not stated");
    }
    if (drive.kind() == DriveKind.BELT) {
      belt(drive, catalog);
    } else if (drive.kind() == DriveKind.SCREW) {
      LEADS.forEach(lead -> lead(drive.lead(), lead));
    } else {
      offer(Math.PI, "a diameter taken for the circumference");
      offer(2, "a radius taken for the diameter");
    }
  }

  private void belt(Drive drive, Catalog catalog) {
    // Teeth are so far apart that one number of them, the nearest, can explain the ratio.
    int teeth = (int) Math.rint(drive.teeth() / ratio);
    if (teeth >= 10 && teeth <= 60) {
      offer((double) drive.teeth() / teeth, teeth + " teeth for " + drive.teeth());
    }
    Set<Double> pitches = new TreeSet<>();
    for (Belt belt : catalog.belts()) {
      if (explains(drive.pitch() / belt.pitchMm())) {
        pitches.add(belt.pitchMm());
      }
    }
    for (double pitch : pitches) {
      causes.add("a pitch of " + n(pitch) + " mm for " + n(drive.pitch()) + " mm");
    }
  }

  private void lead(double stated, double lead) {
    if (explains(stated / lead)) {
      String taken = stated / lead >= 2 ? " (pitch taken for lead)" : "";
      causes.add("a lead of " + n(lead) + " mm for " + n(stated) + " mm" + taken);
    }
  }

  /** Whether a slip that gives this ratio would explain the one found. */
  private boolean explains(double gives) {
    return Math.abs(gives - 1) > CLOSE && Math.abs(gives / ratio - 1) < CLOSE;
  }

  private void offer(double gives, String cause) {
    if (explains(gives)) {
      causes.add(cause);
    }
  }

  private static String size(double ratio) {
    for (int times = 2; times <= 16; times++) {
      if (Math.abs(ratio / times - 1) < CLOSE) {
        return times == 2 ? "twice" : times + " times";
      }
      if (Math.abs(ratio * times - 1) < CLOSE) {
        return times == 2 ? "half" : times == 4 ? "a quarter" : "1/" + times;
      }
    }
    return n(ratio) + " times";
  }
}
