package dev.gantrywright.rules.board;

import dev.gantrywright.names.BoardConstant;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** Two boards of the firmware folder bear the same number. */
@Rule(
    id = "GW-B004",
    slug = "constant-number-shared",
    level = Level.ERROR,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Two boards of the firmware folder bear the same number",
    reads = {"board.constant"},
    source = "ISO/IEC 9899 6.10.1: a condition compares numbers, not names")
public final class ConstantNumberShared implements Check {
  @Override
  public void check(Context context, Sink sink) {
    String constant = context.profile().board().constant();
    for (BoardConstant mine : context.boards()) {
      if (!mine.constant().equals(constant) || mine.number() == null) {
        continue;
      }
      List<String> twins =
          context.boards().stream()
              .filter(other -> mine.number().equals(other.number()))
              .map(BoardConstant::constant)
              .filter(name -> !name.equals(constant))
              .distinct()
              .toList();
      if (!twins.isEmpty()) {
        sink.report(
            "board.constant",
            constant
                + " and "
                + String.join(", ", twins)
                + " bear the number "
                + mine.number()
                + ": the preprocessor cannot tell them apart",
            Remedy.show("give " + constant + " a number of its own in the firmware folder"));
      }
    }
  }
}
