package dev.gantrywright.report.sheet;

/** A text with the mark before it. */
public record Cell(String text, Sign sign) {
  public static Cell of(String text) {
    return new Cell(text, Sign.NONE);
  }
}
