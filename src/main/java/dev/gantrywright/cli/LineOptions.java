package dev.gantrywright.cli;

import dev.gantrywright.app.PortMemory;
import dev.gantrywright.link.Connector;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.Transport;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.machine.LinkSettings;
import dev.gantrywright.machine.PrinterProfile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The printer and the line to it, as several verbs take them. */
final class LineOptions {
  @Parameters(index = "0", paramLabel = "PROFILE", description = "The printer profile.")
  Path profile;

  @Option(
      names = "--port",
      paramLabel = "P",
      defaultValue = "practice:",
      description =
          "Port name, practice:, tcp://host:port, rfc2217://host:port, or usb: for the port that the"
              + " profile keeps (default ${DEFAULT-VALUE}).")
  String port;

  @Option(
      names = "--baud",
      paramLabel = "N",
      description = "Baud rate instead of the profile's; 'auto' tries the usual ones.")
  String baud;

  @Option(
      names = "--dtr",
      paramLabel = "on|off",
      description =
          "Set the line's DTR, once it is open; many boards restart when it goes from off to on.")
  ControlLine dtr;

  @Option(
      names = "--rts",
      paramLabel = "on|off",
      description = "Set the line's RTS, once it is open.")
  ControlLine rts;

  @Option(
      names = "--fault",
      paramLabel = "FAULT",
      split = ",",
      description =
          "A fault of the practice board, such as stuck:xMin:open, swapped:xMin:yMin,"
              + " bounce:xMin:8, stored:x.stepsPerMm:82.")
  List<String> faults = new ArrayList<>();

  @Option(
      names = "--touched",
      paramLabel = "END",
      split = ",",
      description = "Axis ends that the parked machine touches.")
  List<String> touched = new ArrayList<>();

  @Option(
      names = "--remember",
      description =
          "Keep the USB identity of the port in the profile (link.usb), so that --port usb: finds it"
              + " under any name.")
  boolean remember;

  @Option(
      names = "--endstop",
      paramLabel = "NAME=END",
      description =
          "Which axis end a name in the machine's replies is, such as \"left lid=xMin\"; kept in the"
              + " profile (link.endstopNames).")
  Map<String, String> endstops = new LinkedHashMap<>();

  /** What an outgoing control line is set to. */
  enum ControlLine {
    on,
    off
  }

  /**
   * A connector that sets DTR and RTS as asked each time that the line is opened; the one that is
   * not asked for is on, as drivers leave it.
   */
  Connector withControlLines(PortAddress address, Connector connector) {
    if (dtr == null && rts == null) {
      return connector;
    }
    if (address instanceof PortAddress.Practice || address instanceof PortAddress.Tcp) {
      throw new UsageProblem(
          "--dtr and --rts are for a serial port or an rfc2217:// line; " + address + " has none");
    }
    return settings -> {
      Transport line = connector.open(settings);
      if (!line.controlLines(dtr != ControlLine.off, rts != ControlLine.off)) {
        line.close();
        throw new LinkException(
            LinkException.Kind.LOST,
            line.name() + " does not take DTR and RTS: leave --dtr and --rts out");
      }
      return line;
    };
  }

  /** Refuses an option that only the practice board heeds. */
  static void forPractice(PortAddress address, String option) {
    if (!(address instanceof PortAddress.Practice)) {
      throw new UsageProblem(option + " is for the practice board; leave it out with --port");
    }
  }

  PortAddress address(LinkSettings link) {
    try {
      return PortMemory.address(port, link);
    } catch (LinkException e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }

  /** The faults that the practice board is given; a real machine has its own. */
  List<Fault> faultsOn(PortAddress address, PrinterProfile printer) {
    if (!faults.isEmpty()) {
      forPractice(address, "--fault");
    }
    PracticeFit fit = new PracticeFit(printer);
    fit.touched(touched);
    try {
      List<Fault> parsed = faults.stream().map(Fault::parse).toList();
      fit.faults(parsed);
      return parsed;
    } catch (IllegalArgumentException e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }
}
