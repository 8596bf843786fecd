package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Optional;

/** The catalogue does not know this microcontroller. */
@Rule(
    id = "GW-B010",
    slug = "part-not-in-catalogue",
    level = Level.NOTE,
    family = Family.BOARD,
    summary = "The catalogue does not know this microcontroller",
    reads = {"board.mcu"},
    source = "the program's own catalogue")
public final class PartNotInCatalogue implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Optional<String> part = context.partName();
    if (part.isPresent() && context.mcu().isEmpty()) {
      sink.report(
          "board.mcu",
          part.get()
              + " is not among the "
              + context.catalog().mcus().size()
              + " parts of the catalogue: memory, clock and serial dividers stay unchecked");
    }
  }
}
