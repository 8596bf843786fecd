package dev.gantrywright.rules.drivers;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Two axes name the same driver socket. */
@Rule(
    id = "GW-D021",
    slug = "socket-shared",
    level = Level.WARNING,
    family = Family.DRIVERS,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "Two axes name the same driver socket",
    reads = {"axes.*.driver.socket"},
    source = "definition")
public final class SocketShared implements Check {
  @Override
  public void check(Context context, Sink sink) {
    Map<String, String> first = new LinkedHashMap<>();
    context
        .profile()
        .axes()
        .forEach(
            (name, axis) -> {
              String socket = axis.driver().socket();
              String other =
                  socket == null ? null : first.putIfAbsent(socket.toUpperCase(Locale.ROOT), name);
              if (other != null) {
                sink.report(
                    "axes." + name + ".driver.socket",
                    "found " + socket + ", where " + other + " is plugged in",
                    Remedy.show("state the socket that this motor is really plugged into"));
              }
            });
  }
}
