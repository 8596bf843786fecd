package dev.gantrywright.app;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.UsbIdentity;
import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.link.serial.PortList;
import dev.gantrywright.machine.LinkSettings;
import java.util.Optional;

/**
 * Which port a printer is at: remembered by the identity of its USB device, since the name of a
 * port changes with the socket and with what else is plugged in.
 */
public final class PortMemory {
  /** The field that keeps it. */
  public static final String PATH = "link.usb";

  private PortMemory() {}

  /**
   * What is to be kept of the port that was opened, as {@link #PATH} spells it; empty for lines
   * that are no USB port.
   */
  public static Optional<String> toKeep(PortAddress opened, PortList ports) {
    Optional<UsbIdentity> identity = Optional.empty();
    if (opened instanceof PortAddress.Serial serial) {
      identity =
          ports.ports().stream()
              .filter(port -> port.name().equals(serial.port()))
              .findFirst()
              .flatMap(PortDescription::usb);
    } else if (opened instanceof PortAddress.Usb usb) {
      // The address may leave the serial number open; what is there now has one.
      identity = ports.find(usb.identity()).flatMap(PortDescription::usb);
    }
    return identity.map(found -> found.toString().substring("usb:".length()));
  }

  /** Where the printer was last; empty where nothing readable is kept. */
  public static Optional<PortAddress> kept(LinkSettings link) {
    return Optional.ofNullable(link.usb()).flatMap(UsbIdentity::parse).map(PortAddress.Usb::new);
  }

  /**
   * An address as a user gives it; {@code usb:} alone is the port that the profile keeps.
   *
   * @throws LinkException of kind BAD_ADDRESS with one clear line
   */
  public static PortAddress address(String text, LinkSettings link) throws LinkException {
    if (!text.strip().equalsIgnoreCase("usb:")) {
      return PortAddress.parse(text);
    }
    return kept(link)
        .orElseThrow(
            () ->
                new LinkException(
                    LinkException.Kind.BAD_ADDRESS,
                    "the profile keeps no USB port (link.usb): name the port once, with --remember"
                        + " or in the window"));
  }
}
