package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.machine.PrinterProfile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A printer on the start page.
 *
 * @param file its profile
 * @param profile empty where it cannot be read
 * @param board name of its board; empty where no sheet is open
 * @param notes what the rules find
 * @param past what was last done with it
 * @param problem the one line that says why it cannot be read; empty where it can
 */
public record PrinterCard(
    Path file,
    Optional<PrinterProfile> profile,
    String board,
    List<MarginNote> notes,
    PrinterPast past,
    String problem) {
  public PrinterCard {
    notes = List.copyOf(notes);
  }

  static PrinterCard of(OpenPrinter printer, List<MarginNote> notes) {
    String board = printer.sheet() == null ? "" : printer.sheet().name();
    return new PrinterCard(
        printer.file(),
        Optional.of(printer.profile()),
        board == null ? "" : board,
        notes,
        PrinterPast.beside(printer.file()),
        "");
  }

  static PrinterCard broken(Path file, String problem) {
    return new PrinterCard(file, Optional.empty(), "", List.of(), PrinterPast.NONE, problem);
  }

  /** Its name; its file's where it has none. */
  public String title() {
    return profile
        .map(PrinterProfile::name)
        .filter(name -> !name.isBlank())
        .orElse(file.getFileName().toString());
  }
}
