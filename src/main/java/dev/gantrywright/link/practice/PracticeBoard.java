package dev.gantrywright.link.practice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The simulated controller: a command in, reply lines out. Knows time only as it is told, and makes
 * no thread. Commands are the trade's shared ones; the reply texts are its own. Safe for several
 * threads.
 */
public final class PracticeBoard {
  private final PracticeSetup setup;
  private final Contacts contacts;
  private final long start;
  private final Map<String, AxisMotion> stored = new LinkedHashMap<>();
  private final Map<String, AxisMotion> inForce = new LinkedHashMap<>();
  private final List<HeaterState> heaters = new ArrayList<>();
  private List<Fault> faults;
  private boolean halted;
  private long restartsSeen;

  /**
   * @param seed for bounce and noise
   * @param now the monotonic clock
   */
  public PracticeBoard(PracticeSetup setup, long seed, long now) {
    this.setup = setup;
    this.start = now;
    this.faults = setup.faults();
    this.contacts = new Contacts(setup, now, seed);
    setup.built().forEach(axis -> stored.put(key(axis.letter()), axis));
    applyStoredFaults();
    inForce.putAll(stored);
    setup.heaters().forEach(plant -> heaters.add(new HeaterState(plant, now)));
  }

  public PracticeSetup setup() {
    return setup;
  }

  /** Touches or lets go of an endstop, as the user does in the window. */
  public synchronized void touch(String endstop, boolean touched, long now) {
    contacts.touch(endstop, touched, now);
  }

  /**
   * Replaces the faults. Stored settings that a fault changes are changed at once; those of a fault
   * that is gone are again what the firmware was built with.
   */
  public synchronized void faults(List<Fault> others) {
    for (Fault fault : faults) {
      if (fault instanceof Fault.Stored s && !others.contains(fault)) {
        mend(s);
      }
    }
    faults = List.copyOf(others);
    applyStoredFaults();
    inForce.putAll(stored);
  }

  public synchronized List<Fault> faults() {
    return faults;
  }

  /** How long ago it was built, seconds: the time that {@link Fault.Silence} counts in. */
  public double seconds(long now) {
    return (now - start) / 1e9;
  }

  /** What a board says when it has started. */
  public String banner() {
    return "boot practice board for " + setup.name();
  }

  /**
   * Obeys one command line, without its line end.
   *
   * @return the reply, line by line; empty where the board is silent
   */
  public synchronized List<String> obey(String raw, long now) {
    List<String> out = new ArrayList<>();
    if (silent(now)) {
      return out;
    }
    if (restartDue(now)) {
      out.add(banner());
      return out;
    }
    if (faults.stream().anyMatch(f -> f instanceof Fault.Echo)) {
      out.add(raw);
    }
    Optional<PracticeCommand> command = PracticeCommand.read(raw);
    if (command.isEmpty()) {
      out.add("refused: the line is not a command");
      out.add("done");
      return out;
    }
    act(command.get(), now, out);
    return out;
  }

  private void act(PracticeCommand c, long now, List<String> out) {
    switch (c.word()) {
      case "M119" -> endstops(now, out);
      case "M115" -> out.addAll(setup.identity());
      case "M503" -> settings(out);
      case "M105" -> temperatures(now, out);
      case "M112" -> {
        halted = true;
        heaters.forEach(h -> h.heatTo(0, now));
        out.add("halted: heaters off, motors off");
        return;
      }
      case "M110" -> {}
      case "M104", "M109" -> heat("hotend", c, now, out);
      case "M140", "M190" -> heat("bed", c, now, out);
      case "POWER" -> drive(c, now, out);
      case "M92" -> set(AxisMotion.Quantity.STEPS_PER_MM, c);
      case "M203" -> set(AxisMotion.Quantity.MAX_SPEED, c);
      case "M201" -> set(AxisMotion.Quantity.ACCELERATION, c);
      case "M906" -> set(AxisMotion.Quantity.CURRENT, c);
      case "M500" -> stored.putAll(inForce);
      case "M502" -> setup.built().forEach(axis -> inForce.put(key(axis.letter()), axis));
      case "G0", "G1", "G28", "M17", "M18", "M84", "M106", "M107", "M400" -> {
        if (halted) {
          out.add("refused: halted, restart the board first");
        }
      }
      default -> out.add("refused: " + c.word() + " is not known");
    }
    out.add("done");
  }

  private void endstops(long now, List<String> out) {
    for (EndstopInput input : setup.endstops()) {
      boolean triggered = contacts.reads(input, faults, now);
      out.add(reportedName(input.name()) + " = " + (triggered ? "touched" : "clear"));
    }
  }

  /** {@code xMin} is reported as {@code x_min}. */
  static String reportedName(String axisEnd) {
    return axisEnd.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
  }

  private void settings(List<String> out) {
    for (AxisMotion.Quantity quantity : AxisMotion.Quantity.values()) {
      StringBuilder line = new StringBuilder("keep " + quantity.label() + ":");
      boolean any = false;
      for (AxisMotion axis : inForce.values()) {
        if (axis.get(quantity) > 0) {
          line.append(String.format(Locale.ROOT, " %s%.4f", axis.letter(), axis.get(quantity)));
          any = true;
        }
      }
      if (any) {
        out.add(line.toString());
      }
    }
  }

  private void temperatures(long now, List<String> out) {
    for (HeaterState h : heaters) {
      out.add(
          String.format(
              Locale.ROOT,
              "%s = %.2f C, target %.1f C, power %.2f",
              h.name(),
              h.celsius(now),
              h.target(),
              h.power()));
    }
  }

  private void heat(String heater, PracticeCommand c, long now, List<String> out) {
    if (halted) {
      out.add("refused: halted, restart the board first");
      return;
    }
    heaters.stream()
        .filter(h -> h.name().equals(heater))
        .forEach(h -> c.value('S').ifPresent(s -> h.heatTo(s, now)));
  }

  private void drive(PracticeCommand c, long now, List<String> out) {
    if (halted) {
      out.add("refused: halted, restart the board first");
      return;
    }
    List<HeaterState> meant =
        heaters.stream().filter(h -> h.name().equalsIgnoreCase(c.rest())).toList();
    if (meant.isEmpty()) {
      out.add("refused: there is no heater '" + c.rest() + "'");
    }
    meant.forEach(h -> h.drive(c.value('S').orElse(0.0), now));
  }

  private void set(AxisMotion.Quantity quantity, PracticeCommand c) {
    inForce.replaceAll(
        (letter, axis) -> c.value(letter.charAt(0)).map(v -> axis.with(quantity, v)).orElse(axis));
  }

  private void mend(Fault.Stored fault) {
    setup.built().stream()
        .filter(axis -> key(axis.letter()).equals(key(fault.axis())))
        .findFirst()
        .ifPresent(
            axis ->
                stored.computeIfPresent(
                    key(fault.axis()),
                    (k, now) -> now.with(fault.quantity(), axis.get(fault.quantity()))));
  }

  private void applyStoredFaults() {
    for (Fault fault : faults) {
      if (fault instanceof Fault.Stored s) {
        stored.computeIfPresent(key(s.axis()), (k, axis) -> axis.with(s.quantity(), s.value()));
      }
    }
  }

  private boolean silent(long now) {
    double t = (now - start) / 1e9;
    return faults.stream()
        .anyMatch(
            f -> f instanceof Fault.Silence s && t >= s.fromSeconds() && t < s.untilSeconds());
  }

  private boolean restartDue(long now) {
    for (Fault fault : faults) {
      if (fault instanceof Fault.Restarts r) {
        long due = (long) ((now - start) / 1e9 / r.everySeconds());
        if (due > restartsSeen) {
          restartsSeen = due;
          halted = false;
          inForce.putAll(stored);
          heaters.forEach(h -> h.heatTo(0, now));
          return true;
        }
      }
    }
    return false;
  }

  private static String key(String letter) {
    return letter.toUpperCase(Locale.ROOT);
  }
}
