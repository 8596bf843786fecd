package dev.gantrywright.rules;

import dev.gantrywright.header.Change;
import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import java.util.List;

/** Keeps the last folder that was evaluated for a board, for the next check of the same folder. */
final class Memo {
  private record Known(
      FirmwareFolder folder, NameMap names, String constant, FirmwareFolder result) {
    boolean answers(CheckInput input) {
      return folder == input.folder()
          && names == input.names()
          && String.valueOf(constant).equals(String.valueOf(input.profile().board().constant()));
    }
  }

  private volatile Known last;

  FirmwareFolder boardFolder(CheckInput input) {
    Known known = last;
    if (known == null || !known.answers(input)) {
      String constant = input.profile().board().constant();
      known = new Known(input.folder(), input.names(), constant, evaluate(input, constant));
      last = known;
    }
    return known.result();
  }

  private static FirmwareFolder evaluate(CheckInput input, String constant) {
    NameEntry entry = input.names() == null ? null : input.names().fields().get("board.constant");
    if (constant == null || entry == null || entry.macro() == null || entry.section() != null) {
      return input.folder();
    }
    boolean known = input.folder().named(constant).stream().anyMatch(setting -> setting.live());
    return known
        ? EditPlan.of(
                input.folder(),
                List.of(new Change.SetValue(entry.macro(), constant, "board.constant")))
            .after()
        : input.folder();
  }
}
