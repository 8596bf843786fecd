package dev.gantrywright.link.serial;

import com.fazecast.jSerialComm.SerialPort;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.UsbIdentity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The serial ports of a computer, as they are now. */
public interface PortList {
  /** All ports, by name. */
  List<PortDescription> ports();

  /** Those of this computer. */
  static PortList system() {
    UsbChips chips = UsbChips.standard();
    return () -> {
      List<PortDescription> found = new ArrayList<>();
      for (SerialPort port : SerialPort.getCommPorts()) {
        found.add(describe(port, chips));
      }
      found.sort(Comparator.comparing(PortDescription::name));
      return found;
    };
  }

  /**
   * Name of the port at which a USB device is now.
   *
   * @throws LinkException NOT_FOUND when it is not plugged in
   */
  default String require(UsbIdentity wanted) throws LinkException {
    return find(wanted)
        .map(PortDescription::name)
        .orElseThrow(
            () ->
                new LinkException(
                    LinkException.Kind.NOT_FOUND,
                    wanted + " is not plugged in: look at cable and power, then list the ports"));
  }

  /** The port of a USB device, if it is there. */
  default Optional<PortDescription> find(UsbIdentity wanted) {
    return ports().stream().filter(p -> p.usb().filter(wanted::sameDevice).isPresent()).findFirst();
  }

  private static PortDescription describe(SerialPort port, UsbChips chips) {
    String name = port.getSystemPortPath();
    Optional<UsbIdentity> usb =
        port.getVendorID() < 0 || port.getProductID() < 0
            ? Optional.empty()
            : Optional.of(new UsbIdentity(port.getVendorID(), port.getProductID(), serial(port)));
    String description = port.getPortDescription();
    String probably = usb.flatMap(chips::find).map(UsbChips.Row::what).orElse("");
    return new PortDescription(
        name, words(description), usb, probably, PortHolder.of(name), obstacle(name));
  }

  private static String serial(SerialPort port) {
    String serial = port.getSerialNumber();
    return serial == null || serial.equalsIgnoreCase("unknown") ? "" : serial;
  }

  private static String obstacle(String name) {
    try {
      PortAccess.require(name);
      return "";
    } catch (LinkException e) {
      return e.getMessage();
    }
  }

  /** The library calls a port without a device behind it physical, by the end of its name. */
  private static String words(String description) {
    if (description == null) {
      return "";
    }
    return description.startsWith("Physical Port") ? "built-in port, no USB" : description;
  }
}
