package dev.gantrywright.rules.drivers;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.Set;

/** The board has no driver socket of this name. */
@Rule(
    id = "GW-D020",
    slug = "socket-not-on-board",
    level = Level.ERROR,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The board has no driver socket of this name",
    reads = {"axes.*.driver.socket"},
    source = "the board sheet's sockets")
public final class SocketNotOnBoard implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.sheet().isEmpty() || context.sheet().get().sockets().isEmpty()) {
      return;
    }
    Set<String> sockets = context.sheet().get().sockets().keySet();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              String socket = axis.driver().socket();
              if (socket != null && sockets.stream().noneMatch(socket::equalsIgnoreCase)) {
                sink.report(
                    "axes." + name + ".driver.socket",
                    "found "
                        + socket
                        + "; the "
                        + context.boardName()
                        + " has "
                        + String.join(", ", sockets),
                    Remedy.show("state the name that is printed beside the socket"));
              }
            });
  }
}
