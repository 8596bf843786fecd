package dev.gantrywright.link.practice;

import java.util.List;

/**
 * What a practice board is built from. The wiring is the machine's; {@code inverted}, {@code built}
 * and {@code identity} are the firmware's.
 *
 * @param name of the printer that it stands for
 * @param identity what the firmware says of itself, one item a line
 * @param endstops wiring and polarity of each fitted endstop
 * @param built what the firmware was built with for each axis
 * @param heaters the thermal plants
 * @param touched endstops that the parked machine touches
 * @param presses touches that the practice hand makes
 * @param faults what is wrong with it
 */
public record PracticeSetup(
    String name,
    List<String> identity,
    List<EndstopInput> endstops,
    List<AxisMotion> built,
    List<ThermalPlant> heaters,
    List<String> touched,
    List<Press> presses,
    List<Fault> faults) {
  public PracticeSetup {
    identity = List.copyOf(identity);
    endstops = List.copyOf(endstops);
    built = List.copyOf(built);
    heaters = List.copyOf(heaters);
    touched = List.copyOf(touched);
    presses = List.copyOf(presses);
    faults = List.copyOf(faults);
  }

  public PracticeSetup withFaults(List<Fault> others) {
    return new PracticeSetup(name, identity, endstops, built, heaters, touched, presses, others);
  }

  public PracticeSetup withPresses(List<Press> others) {
    return new PracticeSetup(name, identity, endstops, built, heaters, touched, others, faults);
  }

  public PracticeSetup withTouched(List<String> others) {
    return new PracticeSetup(name, identity, endstops, built, heaters, others, presses, faults);
  }
}
