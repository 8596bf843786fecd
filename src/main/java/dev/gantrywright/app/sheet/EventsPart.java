package dev.gantrywright.app.sheet;

import dev.gantrywright.app.record.EventWords;
import dev.gantrywright.record.Event;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Cell;
import dev.gantrywright.report.sheet.Section;
import java.util.List;

/** Who did what and when: the newest of the printer's history. */
final class EventsPart {
  /** More would fill pages; the history file holds all. */
  private static final int MOST = 25;

  private EventsPart() {}

  static Section of(Subject subject) {
    List<Event> newest = subject.past().newestFirst().stream().limit(MOST).toList();
    if (newest.isEmpty()) {
      return new Section(
          "events",
          "Who and when",
          List.of(
              new Block.Missing(
                  "The printer has no history yet.",
                  "It is written beside the profile with the first export, build, load or proof.")));
    }
    int all = subject.past().events().size();
    String caption =
        all > MOST ? "The newest " + MOST + " of " + all + " events" : Texts.count(all, "event");
    return new Section(
        "events",
        "Who and when",
        List.of(
            new Block.Table(
                caption,
                List.of(
                    Texts.text("When", 4),
                    Texts.text("Who", 2),
                    Texts.text("What", 2),
                    Texts.text("Outcome", 8),
                    Texts.codes("Event", 2)),
                newest.stream().map(EventsPart::row).toList())));
  }

  private static List<Cell> row(Event event) {
    return List.of(
        Cell.of(Texts.time(event)),
        Cell.of(event.by()),
        Cell.of(event.kind().replace('-', ' ')),
        Cell.of(EventWords.of(event)),
        Cell.of(event.id()));
  }
}
