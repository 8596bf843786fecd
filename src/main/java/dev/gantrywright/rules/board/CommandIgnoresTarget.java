package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.List;

/** The build command does not pass the build target on. */
@Rule(
    id = "GW-B023",
    slug = "command-ignores-target",
    level = Level.WARNING,
    family = Family.BOARD,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The build command does not pass the build target on",
    reads = {"build.command", "board.target"},
    source = "the profile's own build command")
public final class CommandIgnoresTarget implements Check {
  @Override
  public void check(Context context, Sink sink) {
    List<String> command = context.profile().build().command();
    String target = context.profile().board().target();
    if (!command.isEmpty()
        && target != null
        && context.targetNames().size() > 1
        && command.stream().noneMatch(word -> word.contains("{target}") || word.contains(target))) {
      sink.report(
          "build.command",
          "found \""
              + String.join(" ", command)
              + "\": "
              + target
              + " is in none of its words, so the folder's default is built",
          Remedy.show("put {target} where the command takes the target's name"));
    }
  }
}
