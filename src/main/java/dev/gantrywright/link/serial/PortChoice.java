package dev.gantrywright.link.serial;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.UsbIdentity;
import java.util.Optional;

/** Remembers a printer's port by what is plugged in, not by the name that it happened to have. */
public final class PortChoice {
  private PortChoice() {}

  /** What to keep for a port that was used: its USB identity, where it has one. */
  public static Optional<String> remember(PortList list, String portName) {
    return list.ports().stream()
        .filter(p -> p.name().equals(portName))
        .findFirst()
        .flatMap(PortDescription::usb)
        .map(UsbIdentity::toString);
  }

  /** The port at which a remembered device is now, under whatever name. */
  public static Optional<PortAddress> recall(PortList list, String remembered) {
    return Optional.ofNullable(remembered)
        .flatMap(UsbIdentity::parse)
        .flatMap(list::find)
        .map(p -> new PortAddress.Serial(p.name()));
  }
}
