package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.DriverPlace;
import dev.gantrywright.ui.state.Gravity;
import java.util.List;
import java.util.Map;

/**
 * What the machine plan shows.
 *
 * @param boardName name of the board; empty where no sheet is open
 * @param drivers places for motor drivers, of the board sheet or else of the profile
 * @param chosen id of the part in hand
 * @param marks the gravest note of each part that has one, by part id
 * @param seen live endstop states by axis end; empty while nothing is connected
 * @param disagreeing axis ends whose state is not the expected one
 */
public record PlanContent(
    PrinterProfile profile,
    String boardName,
    List<DriverPlace> drivers,
    String chosen,
    Map<String, Gravity> marks,
    Map<String, ContactState> seen,
    java.util.Set<String> disagreeing) {
  public PlanContent {
    drivers = List.copyOf(drivers);
    marks = Map.copyOf(marks);
    seen = Map.copyOf(seen);
    disagreeing = java.util.Set.copyOf(disagreeing);
  }
}
