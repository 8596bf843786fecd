package dev.gantrywright.app.sheet;

import dev.gantrywright.record.Event;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Sign;
import java.util.Locale;

/** Texts that several parts of a sheet set alike. */
final class Texts {
  private Texts() {}

  static Block.Fact fact(String label, String value) {
    return new Block.Fact(label, Cell.of(value), false);
  }

  static Block.Fact code(String label, String value) {
    return new Block.Fact(label, Cell.of(value), true);
  }

  static Block.Fact fact(String label, String value, Sign sign) {
    return new Block.Fact(label, new Cell(value, sign), false);
  }

  static Block.Column text(String head, int share) {
    return new Block.Column(head, Block.Set.TEXT, share);
  }

  static Block.Column codes(String head, int share) {
    return new Block.Column(head, Block.Set.CODE, share);
  }

  static Block.Column number(String head, int share) {
    return new Block.Column(head, Block.Set.NUMBER, share);
  }

  /** Day, minute and name of an event: {@code 2026-03-02 12:00 UTC, ida}. */
  static String when(Event event) {
    return time(event) + (event.by().isEmpty() ? "" : ", " + event.by());
  }

  static String time(Event event) {
    return event.time().toString().substring(0, 16).replace('T', ' ') + " UTC";
  }

  static String count(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  static String bytes(long bytes) {
    return String.format(Locale.ROOT, "%,d bytes", bytes);
  }
}
