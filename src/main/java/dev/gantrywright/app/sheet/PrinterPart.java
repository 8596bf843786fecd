package dev.gantrywright.app.sheet;

import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** The machine as its profile describes it. */
final class PrinterPart {
  private PrinterPart() {}

  static Section of(Subject subject) {
    List<Block> blocks = new ArrayList<>();
    if (subject.profile().notes() != null && !subject.profile().notes().isBlank()) {
      blocks.add(new Block.Words(subject.profile().notes()));
    }
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Texts.fact("Kinematics", subject.value("kinematics")));
    facts.add(
        Texts.fact(
            "Console",
            "port "
                + subject.value("serial.port")
                + ", "
                + subject.value("serial.baud")
                + " bit/s"
                + (subject.value("serial.nativeUsb").equals("yes") ? ", native USB" : "")));
    facts.add(
        Texts.fact(
            "Supply",
            subject.value("supply.volts")
                + " V, "
                + subject.value("supply.amps")
                + " A; fuse "
                + subject.value("supply.fuseAmps")
                + " A"));
    arms(subject, facts);
    facts.add(Texts.code("Profile", subject.printer().file().getFileName().toString()));
    facts.add(Texts.code("SHA-256 of its values", subject.state().sha256()));
    blocks.add(new Block.Facts(facts));
    travel(subject, blocks);
    drives(subject, blocks);
    endstops(subject, blocks);
    heaters(subject, blocks);
    return new Section("printer", "Printer", blocks);
  }

  /** The arms of a delta printer; others have none to speak of. */
  private static void arms(Subject subject, List<Block.Fact> facts) {
    List<String> lengths =
        subject.profile().axes().entrySet().stream()
            .filter(axis -> axis.getValue().armLength() != null)
            .map(
                axis -> axis.getKey() + " " + subject.value("axes." + axis.getKey() + ".armLength"))
            .toList();
    if (!lengths.isEmpty()) {
      facts.add(Texts.fact("Arms, mm", String.join(", ", lengths)));
    }
  }

  private static void travel(Subject subject, List<Block> blocks) {
    add(
        subject,
        blocks,
        "Axes",
        "axes",
        subject.profile().axes().keySet(),
        List.of(
            Texts.text("Axis", 2),
            Texts.number("From, mm", 2),
            Texts.number("To, mm", 2),
            Texts.number("Steps/mm", 2),
            Texts.number("Top speed, mm/s", 3),
            Texts.number("Acceleration, mm/s²", 3),
            Texts.text("Homes to", 2),
            Texts.text("Direction inverted", 2)),
        List.of(
            "travelMin",
            "travelMax",
            "stepsPerMm",
            "maxSpeed",
            "acceleration",
            "homing.end",
            "directionInverted"));
  }

  private static void drives(Subject subject, List<Block> blocks) {
    add(
        subject,
        blocks,
        "Motors, drivers and drive trains",
        "axes",
        subject.profile().axes().keySet(),
        List.of(
            Texts.text("Axis", 2),
            Texts.text("Driver", 3),
            Texts.text("Socket", 2),
            Texts.number("Microsteps", 3),
            Texts.number("Set, A", 2),
            Texts.number("Motor, A", 2),
            Texts.text("Drive", 2),
            Texts.number("Pitch, mm", 2),
            Texts.number("Teeth", 2),
            Texts.number("Lead, mm", 2),
            Texts.number("Wheel, mm", 2),
            Texts.number("Ratio", 2)),
        List.of(
            "driver.ic",
            "driver.socket",
            "driver.microsteps",
            "driver.current",
            "motor.ratedCurrent",
            "drive.kind",
            "drive.pitch",
            "drive.teeth",
            "drive.lead",
            "drive.gearDiameter",
            "drive.ratio"));
  }

  private static void endstops(Subject subject, List<Block> blocks) {
    add(
        subject,
        blocks,
        "Endstops",
        "endstops",
        subject.profile().endstops().keySet(),
        List.of(
            Texts.text("Endstop", 3),
            Texts.text("Fitted", 2),
            Texts.text("Contact", 2),
            Texts.text("Sensor", 2),
            Texts.text("Input", 2),
            Texts.number("Voltage, V", 2),
            Texts.text("Pin", 3),
            Texts.text("Inverted", 2),
            Texts.text("Own pull-up", 2)),
        List.of("fitted", "contact", "sensor", "input", "voltage", "pin", "inverted", "pullUp"));
  }

  private static void heaters(Subject subject, List<Block> blocks) {
    add(
        subject,
        blocks,
        "Heaters",
        "heaters",
        subject.profile().heaters().keySet(),
        List.of(
            Texts.text("Heater", 3),
            Texts.text("Sensor", 4),
            Texts.number("Lowest, °C", 2),
            Texts.number("Highest, °C", 2),
            Texts.number("Power, W", 2),
            Texts.number("Rated, V", 2),
            Texts.text("Output", 2),
            Texts.text("Runaway protection", 3)),
        List.of("sensor", "minimum", "maximum", "watts", "volts", "output", "protection"));
  }

  private static void add(
      Subject subject,
      List<Block> blocks,
      String caption,
      String group,
      Collection<String> names,
      List<Block.Column> columns,
      List<String> fields) {
    if (names.isEmpty()) {
      blocks.add(
          new Block.Missing(
              caption + " are not described.", "Enter them in the profile under " + group + "."));
      return;
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (String name : names) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.of(name));
      fields.forEach(field -> row.add(Cell.of(subject.value(group + "." + name + "." + field))));
      rows.add(row);
    }
    blocks.add(new Block.Table(caption, columns, rows));
  }
}
