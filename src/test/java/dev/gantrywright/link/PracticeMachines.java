package dev.gantrywright.link;

import dev.gantrywright.link.practice.AxisMotion;
import dev.gantrywright.link.practice.EndstopInput;
import dev.gantrywright.link.practice.EndstopInput.Contact;
import dev.gantrywright.link.practice.EndstopInput.Pull;
import dev.gantrywright.link.practice.EndstopInput.Sensor;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.link.practice.Press;
import dev.gantrywright.link.practice.ThermalPlant;
import java.util.List;

/** Practice machines for tests. */
public final class PracticeMachines {
  private PracticeMachines() {}

  /** Three endstops, all wired and told rightly: NC, NO and an NPN sensor. */
  public static PracticeSetup plover() {
    return new PracticeSetup(
        "Plover",
        List.of("firmware: rookery 2.3", "for: Plover"),
        List.of(
            new EndstopInput("xMin", Contact.NC, Pull.UP, Sensor.SWITCH, false),
            new EndstopInput("yMin", Contact.NO, Pull.UP, Sensor.SWITCH, true),
            new EndstopInput("zMin", Contact.NO, Pull.UP, Sensor.NPN, true)),
        List.of(
            new AxisMotion("X", 80, 200, 1500, 0.8),
            new AxisMotion("Y", 80, 200, 1500, 0.8),
            new AxisMotion("Z", 400, 12, 100, 0.8),
            new AxisMotion("E", 415.2, 50, 3000, 0)),
        List.of(new ThermalPlant("hotend", 20, 300, 60, 2)),
        List.of(),
        List.of(),
        List.of());
  }

  public static PracticeBoard board(Fault... faults) {
    return new PracticeBoard(plover().withFaults(List.of(faults)), 7, System.nanoTime());
  }

  public static PracticeBoard touching(List<Press> presses, Fault... faults) {
    return new PracticeBoard(
        plover().withFaults(List.of(faults)).withPresses(presses), 7, System.nanoTime());
  }
}
