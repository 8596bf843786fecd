package dev.gantrywright.link.serial;

import dev.gantrywright.link.UsbIdentity;
import java.util.Optional;

/**
 * One serial port of this computer.
 *
 * @param name what to open
 * @param description the system's or the device's own
 * @param usb its USB identity, where it is a USB port
 * @param probably what it probably is; empty where that is not known
 * @param holder the program that has it open, where the system shows it
 * @param obstacle why this user cannot open it and what to do; empty where nothing stands in the
 *     way
 */
public record PortDescription(
    String name,
    String description,
    Optional<UsbIdentity> usb,
    String probably,
    Optional<String> holder,
    String obstacle) {}
