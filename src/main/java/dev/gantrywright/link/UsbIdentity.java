package dev.gantrywright.link;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which USB device it is, whatever name the system gives its port today.
 *
 * @param vendor USB vendor number
 * @param product USB product number
 * @param serial the device's serial number; empty where it has none
 */
public record UsbIdentity(int vendor, int product, String serial) {
  private static final Pattern FORM =
      Pattern.compile("(?i)(?:usb:)?([0-9a-f]{4}):([0-9a-f]{4})(?::(.*))?");

  /** Reads {@code usb:VID:PID} or {@code usb:VID:PID:SERIAL}, the numbers in hexadecimal. */
  public static Optional<UsbIdentity> parse(String text) {
    Matcher m = FORM.matcher(text.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    String serial = m.group(3) == null ? "" : m.group(3);
    return Optional.of(
        new UsbIdentity(
            Integer.parseInt(m.group(1), 16), Integer.parseInt(m.group(2), 16), serial));
  }

  /** True when the other is the same device; a missing serial number matches any of its kind. */
  public boolean sameDevice(UsbIdentity other) {
    return vendor == other.vendor
        && product == other.product
        && (serial.isEmpty() || serial.equals(other.serial));
  }

  @Override
  public String toString() {
    String base = String.format(Locale.ROOT, "usb:%04x:%04x", vendor, product);
    return serial.isEmpty() ? base : base + ":" + serial;
  }
}
