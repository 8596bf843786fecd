package dev.gantrywright.ui.names;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.ui.state.PrinterDesk;
import java.util.Map;
import java.util.Optional;

/** Fills several fields of the profile as one named edit. */
final class ProfileFill {
  private ProfileFill() {}

  /** One clear line where a field does not take its value; nothing has changed then. */
  static Optional<String> apply(PrinterDesk desk, String label, Map<String, String> values) {
    PrinterProfile filled = desk.profile();
    try {
      for (Map.Entry<String, String> value : values.entrySet()) {
        filled = ProfileValues.with(filled, value.getKey(), value.getValue());
      }
    } catch (ProfileProblem refused) {
      return Optional.of(refused.getMessage());
    }
    PrinterProfile next = filled;
    desk.values().change(label, "", now -> next);
    return Optional.empty();
  }
}
