package dev.gantrywright.report.sheet;

import java.util.List;

/**
 * The report on one machine.
 *
 * @param printer its name
 * @param subtitle board, controller, firmware
 * @param date the day that the sheet speaks of, as it is to be printed
 * @param by who made it; empty where that is not known
 * @param standing how far each stage of the work has come: stage and words
 */
public record Sheet(
    String printer,
    String subtitle,
    String date,
    String by,
    List<Block.Fact> standing,
    List<Section> sections) {
  /** BCP 47. */
  public static final String LANGUAGE = "en";

  public Sheet {
    standing = List.copyOf(standing);
    sections = List.copyOf(sections);
  }

  /** As the document is called. */
  public String title() {
    return printer + ": as-built sheet";
  }

  /** The sections in which something has not been done. */
  public List<String> open() {
    return sections.stream().filter(Section::open).map(Section::title).toList();
  }
}
