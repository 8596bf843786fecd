package dev.gantrywright.cli;

import dev.gantrywright.link.UsbIdentity;
import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.link.serial.PortList;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Lists the serial ports. */
@Command(
    name = "ports",
    mixinStandardHelpOptions = true,
    description =
        "Lists the serial ports of this computer: USB identity, what each probably is, whether"
            + " another program has it, and what keeps you from opening it.")
final class PortsVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;

  @Override
  public Integer call() {
    List<PortDescription> ports = PortList.system().ports();
    if (format.json()) {
      Printed.json(spec, Map.of("ports", ports.stream().map(PortsVerb::row).toList()));
      return ExitStatus.FINE;
    }
    PrintWriter out = Printed.out(spec);
    if (ports.isEmpty()) {
      out.println("no serial port; plug a board in, or use practice:");
    }
    for (PortDescription port : ports) {
      out.println(port.name() + "  " + port.description());
      port.usb().ifPresent(usb -> out.println("    " + usb));
      if (!port.probably().isEmpty()) {
        out.println("    probably " + port.probably());
      }
      port.holder().ifPresent(h -> out.println("    in use by " + h));
      if (!port.obstacle().isEmpty()) {
        out.println("    " + port.obstacle());
      }
    }
    return ExitStatus.FINE;
  }

  private static Map<String, Object> row(PortDescription port) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", port.name());
    row.put("description", port.description());
    row.put("usb", port.usb().map(UsbIdentity::toString).orElse(null));
    row.put("probably", port.probably());
    row.put("inUseBy", port.holder().orElse(null));
    row.put("obstacle", port.obstacle());
    return row;
  }
}
