package dev.gantrywright.app;

import java.nio.file.Path;
import java.util.Locale;

/** Where histories and replaced images of each board or printer are kept. */
public final class RecordPlace {
  private RecordPlace() {}

  /** The folder of the user who runs the program. */
  public static Path ofThisUser() {
    return Places.ofThisUser().data().resolve("records");
  }

  /** A board's or printer's own folder in it. */
  public static Path of(Path records, String name) {
    String safe = name == null ? "" : name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    safe = safe.replaceAll("^-+|-+$", "");
    return records.resolve(safe.isEmpty() ? "unnamed" : safe);
  }
}
