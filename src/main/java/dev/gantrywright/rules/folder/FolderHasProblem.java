package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;

/** A file of the firmware folder cannot be read as it stands. */
@Rule(
    id = "GW-F015",
    slug = "folder-has-problem",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "A file of the firmware folder cannot be read as it stands",
    reads = {"build.folder"},
    source = "ISO/IEC 9899 6.10")
public final class FolderHasProblem implements Check {
  @Override
  public void check(Context context, Sink sink) {
    context
        .folder()
        .ifPresent(
            folder ->
                folder.problems().stream()
                    .limit(20)
                    .forEach(
                        problem ->
                            sink.report(
                                problem.file() + ":" + problem.line(),
                                problem.text(),
                                Remedy.show("mend the file in the firmware folder"))));
  }
}
