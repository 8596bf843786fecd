package dev.gantrywright.prove;

import dev.gantrywright.link.practice.AxisMotion;
import dev.gantrywright.link.practice.EndstopInput;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.link.practice.ThermalPlant;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.SensorKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The practice board that stands for a printer: wired as the profile describes the machine, with
 * the firmware built as told.
 */
public final class PracticeMachine {
  private PracticeMachine() {}

  /** With firmware that was built from the profile as it is. */
  public static PracticeSetup of(PrinterProfile profile) {
    return of(profile, Map.of());
  }

  /**
   * With firmware that was built from other values.
   *
   * @param built field path to value as text: {@code endstops.xMin.inverted}, {@code
   *     axes.x.stepsPerMm}, {@code axes.x.maxSpeed}, {@code axes.x.acceleration}, {@code
   *     axes.x.driver.current}, {@code identity}; what it lacks is as in the profile
   * @throws IllegalArgumentException when a value is no number or truth value
   */
  public static PracticeSetup of(PrinterProfile profile, Map<String, String> built) {
    List<EndstopInput> endstops = new ArrayList<>();
    profile
        .endstops()
        .forEach(
            (end, endstop) -> {
              if (Boolean.TRUE.equals(endstop.fitted())) {
                endstops.add(input(end, endstop, built));
              }
            });
    List<AxisMotion> axes = new ArrayList<>();
    profile
        .axes()
        .forEach(
            (name, axis) -> {
              String at = "axes." + name + ".";
              axes.add(
                  new AxisMotion(
                      name.toUpperCase(Locale.ROOT),
                      number(built, at + "stepsPerMm", axis.stepsPerMm()),
                      number(built, at + "maxSpeed", axis.maxSpeed()),
                      number(built, at + "acceleration", axis.acceleration()),
                      number(built, at + "driver.current", axis.driver().current())));
            });
    List<ThermalPlant> heaters = new ArrayList<>();
    profile.heaters().keySet().forEach(name -> heaters.add(plant(name)));
    String name = profile.name() == null ? "a printer" : profile.name();
    String identity = built.getOrDefault("identity", says(name, built));
    return new PracticeSetup(
        name, identity.lines().toList(), endstops, axes, heaters, List.of(), List.of(), List.of());
  }

  /** The name, and what the firmware carries below {@code identity}, such as its date. */
  private static String says(String printer, Map<String, String> built) {
    StringBuilder says =
        new StringBuilder("practice firmware for " + built.getOrDefault("name", printer));
    built.forEach(
        (path, value) -> {
          if (path.startsWith("identity.")) {
            says.append('\n')
                .append(path.substring("identity.".length()))
                .append(": ")
                .append(value);
          }
        });
    return says.toString();
  }

  private static EndstopInput input(String end, Endstop e, Map<String, String> built) {
    return new EndstopInput(
        end,
        e.contact() == dev.gantrywright.machine.Contact.NC
            ? EndstopInput.Contact.NC
            : EndstopInput.Contact.NO,
        pull(e),
        sensor(e.sensor()),
        truth(built, "endstops." + end + ".inverted", e.inverted()));
  }

  /** A microcontroller's own pull-up counts where the firmware switches it on. */
  private static EndstopInput.Pull pull(Endstop e) {
    InputPull input = e.input();
    if (input == null || input == InputPull.NONE) {
      return input == null || Boolean.TRUE.equals(e.pullUp())
          ? EndstopInput.Pull.UP
          : EndstopInput.Pull.NONE;
    }
    return switch (input) {
      case PULL_UP -> EndstopInput.Pull.UP;
      case PULL_DOWN -> EndstopInput.Pull.DOWN;
      case DRIVEN -> EndstopInput.Pull.DRIVEN;
      case NONE -> EndstopInput.Pull.NONE;
    };
  }

  private static EndstopInput.Sensor sensor(SensorKind kind) {
    if (kind == null) {
      return EndstopInput.Sensor.SWITCH;
    }
    return switch (kind) {
      case SWITCH -> EndstopInput.Sensor.SWITCH;
      case NPN -> EndstopInput.Sensor.NPN;
      case PNP -> EndstopInput.Sensor.PNP;
    };
  }

  /** A plant of plausible size: gain, lag and dead time are ours, for practice only. */
  private static ThermalPlant plant(String name) {
    return name.equals("bed")
        ? new ThermalPlant(name, 22, 110, 300, 6)
        : new ThermalPlant(name, 22, 330, 90, 3);
  }

  private static double number(Map<String, String> built, String path, Double described) {
    String text = built.get(path);
    if (text == null) {
      return described == null ? 0 : described;
    }
    try {
      return Double.parseDouble(text.strip());
    } catch (NumberFormatException e) {
      throw new IllegalArgumentException(path + " is '" + text + "'; a number is wanted", e);
    }
  }

  private static boolean truth(Map<String, String> built, String path, Boolean described) {
    String text = built.get(path);
    if (text == null) {
      return Boolean.TRUE.equals(described);
    }
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "true", "1" -> true;
      case "false", "0" -> false;
      default ->
          throw new IllegalArgumentException(path + " is '" + text + "'; true or false is wanted");
    };
  }
}
