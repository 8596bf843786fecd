package dev.gantrywright.ui.state;

import dev.gantrywright.rules.Family;
import java.util.Set;

/** At which stage of the work a finding is settled. */
public final class SettledAt {
  /** Rules about how the image gets onto the board. */
  private static final Set<String> LOADING =
      Set.of(
          "artefact-kind-not-loadable",
          "image-name-not-short",
          "image-start-differs-from-loader",
          "offset-beyond-flash",
          "offset-breaks-vector-table");

  private SettledAt() {}

  /** The stage; what is stated wrongly about the machine is settled in Describe. */
  public static Stage of(MarginNote note) {
    String path = note.path();
    if (LOADING.contains(note.slug()) || path.startsWith("build.flash")) {
      return Stage.LOAD;
    }
    boolean folder = note.family().equals(Family.FOLDER.title());
    if (folder || path.indexOf(':') >= 0 || path.matches("build\\.(folder|names)")) {
      return Stage.WRITE;
    }
    if (path.equals("build") || path.startsWith("build.")) {
      return Stage.BUILD;
    }
    return path.equals("link") || path.startsWith("link.") ? Stage.PROVE : Stage.DESCRIBE;
  }
}
