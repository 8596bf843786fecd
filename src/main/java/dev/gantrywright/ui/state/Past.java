package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.record.PrinterHistory;
import java.io.IOException;
import java.time.Clock;

/** Keeps what the window does in the printer's history. Its methods block. */
public final class Past {
  private Past() {}

  /** Adds one event. */
  public interface Writing {
    void to(PrinterHistory history) throws IOException;
  }

  /** The history beside the printer's profile, under the name of this computer's user. */
  public static PrinterHistory of(OpenPrinter printer, Clock clock) {
    return PrinterHistory.beside(printer.file(), System.getProperty("user.name", ""), clock);
  }

  /**
   * Adds the event.
   *
   * @return empty, or what to say where it could not be kept; the work itself is done all the same
   */
  public static String keep(OpenPrinter printer, Clock clock, Writing event) {
    try {
      event.to(of(printer, clock));
      return "";
    } catch (IOException failed) {
      return Texts.of("past.notKept", failed.getMessage());
    }
  }
}
