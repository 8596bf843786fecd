package dev.gantrywright.ui.state;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What the user asks for when a line is to be opened.
 *
 * @param hertz how often the endstops are asked for
 * @param firmware field path to value: what a practice board's firmware was built from where that
 *     is not the profile; asked off the view's thread
 * @param search whether the baud rate is to be found by trying
 */
record LineRequest(
    PrinterProfile profile,
    PortAddress address,
    double hertz,
    Supplier<Map<String, String>> firmware,
    boolean search) {

  /** The same with what the profile says now. */
  LineRequest of(PrinterProfile now) {
    return new LineRequest(now, address, hertz, firmware, search);
  }

  /** The same at another rate of asking. */
  LineRequest at(double other) {
    return new LineRequest(profile, address, other, firmware, search);
  }

  boolean practice() {
    return address instanceof PortAddress.Practice;
  }

  /** What the user calls the port. */
  String port() {
    return practice() ? Texts.of("link.practice") : address.toString();
  }

  /** The axis ends to be watched. */
  List<String> ends() {
    return List.copyOf(profile.endstops().keySet());
  }
}
