package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import dev.gantrywright.rules.UnreadFolder;

/** The firmware folder that the profile names is gone, or holds no header. */
@Rule(
    id = "GW-F022",
    slug = "folder-not-open",
    level = Level.WARNING,
    family = Family.FOLDER,
    fix = Rule.Fix.SHOW_ONLY,
    summary = "The firmware folder is not open, so nothing can be written or built",
    reads = {"build.folder"},
    source = "the file system")
public final class FolderNotOpen implements Check {
  @Override
  public void check(Context context, Sink sink) {
    if (context.folder().isPresent()) {
      return;
    }
    context
        .unreadFolder()
        .ifPresent(
            unread -> {
              String why = why(unread, context.profile().build().folder());
              if (!why.isEmpty()) {
                sink.report(
                    "build.folder",
                    why,
                    Remedy.show("name another folder in the profile (Build), or bring it back"));
              }
            });
  }

  /** A folder that was stated anew since has not been looked for yet. */
  private static String why(UnreadFolder unread, String stated) {
    if (unread.stated() == null || unread.stated().equals(stated)) {
      return unread.why();
    }
    return stated == null || stated.isBlank() ? "" : stated + " has not been read yet";
  }
}
