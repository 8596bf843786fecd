package dev.gantrywright.rules.book;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.board.BoardRules;
import dev.gantrywright.rules.drivers.DriversRules;
import dev.gantrywright.rules.endstops.EndstopsRules;
import dev.gantrywright.rules.folder.FolderRules;
import dev.gantrywright.rules.motion.MotionRules;
import dev.gantrywright.rules.power.PowerRules;
import dev.gantrywright.rules.serial.SerialRules;
import dev.gantrywright.rules.thermal.ThermalRules;
import java.util.List;
import java.util.stream.Stream;

/** The rule book that ships: every family in the order in which reports list them. */
public final class StandardBook {
  private StandardBook() {}

  public static RuleBook open() {
    return RuleBook.of(
        Stream.of(
                BoardRules.all(),
                SerialRules.all(),
                EndstopsRules.all(),
                MotionRules.all(),
                DriversRules.all(),
                ThermalRules.all(),
                PowerRules.all(),
                FolderRules.all())
            .flatMap(List<Check>::stream)
            .toList());
  }
}
