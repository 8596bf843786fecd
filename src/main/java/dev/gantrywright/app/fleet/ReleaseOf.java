package dev.gantrywright.app.fleet;

import dev.gantrywright.app.record.LoadedExport;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.HistoryFile;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Which release a printer runs, as far as its history shows it: the image that was loaded last, the
 * build that left that image, the export that build was made from.
 *
 * @param described release that the profile names; empty where it names none
 * @param exported release of the last patched folder; empty where there is none on record
 * @param loaded release of the image that was loaded last; empty where that cannot be told
 * @param load when the last image was loaded; empty where no load is on record
 * @param problem why the printer could not be read; empty where it could
 */
public record ReleaseOf(
    String file,
    String printer,
    String described,
    String exported,
    String loaded,
    Optional<Event> load,
    String problem) {

  /** Reads one printer of a fleet. */
  public static ReleaseOf of(Fleet fleet, Path file) {
    String name = fleet.name(file);
    try {
      PrinterProfile profile = ProfileStore.read(file);
      Timeline past = HistoryFile.beside(file).read();
      Optional<Event> load = past.last(EventKind.LOAD);
      return new ReleaseOf(
          name,
          profile.name() == null ? name : profile.name(),
          described(profile),
          past.last(EventKind.EXPORT).map(ReleaseOf::release).orElse(""),
          load.flatMap(event -> LoadedExport.of(past.events(), event))
              .map(ReleaseOf::release)
              .orElse(""),
          load,
          "");
    } catch (ProfileProblem | IOException unreadable) {
      return new ReleaseOf(name, "", "", "", "", Optional.empty(), unreadable.getMessage());
    }
  }

  private static String described(PrinterProfile profile) {
    String folder = profile.build().folder();
    if (folder == null || folder.isBlank()) {
      return "";
    }
    return folder.replace('\\', '/').replaceAll("/+$", "").replaceAll("^.*/", "");
  }

  private static String release(Event export) {
    return export.facts().path("firmware").path("release").asString("");
  }

  /** What is known of the release on the board, in words. */
  public String standing() {
    if (load.isEmpty()) {
      return "no load on record";
    }
    return loaded.isEmpty() ? "loaded an image of unknown release" : "loaded " + loaded;
  }

  /**
   * Whether it runs a release, as far as can be told: by what was loaded, else by what the profile
   * names.
   */
  public boolean runs(String release) {
    return loaded.isEmpty() ? described.equals(release) : loaded.equals(release);
  }
}
