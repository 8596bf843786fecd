package dev.gantrywright.app.record;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.HistoryFile;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a firmware says of itself: the machine's name, and whatever the user's name map carries
 * below {@code identity}, such as {@code identity.version}, {@code identity.date} or {@code
 * identity.hash}.
 */
public final class FirmwareIdentity {
  /** The machine's own name, as far as a firmware tells it. */
  public static final String NAME = "name";

  private static final String BELOW = "identity.";

  private static final Timeline NOTHING = new Timeline(List.of(), List.of(), 0);

  private FirmwareIdentity() {}

  /** What it is to its text, for the fields that the map carries and the folder gives a value. */
  public static Map<String, String> of(FirmwareFolder folder, NameMap names) {
    Map<String, String> told = new LinkedHashMap<>();
    names
        .fields()
        .forEach(
            (path, entry) -> {
              if (path.equals(NAME) || path.startsWith(BELOW)) {
                String what = path.equals(NAME) ? NAME : path.substring(BELOW.length());
                text(folder, entry).ifPresent(text -> told.put(what, text));
              }
            });
    return told;
  }

  /**
   * What the firmware on the board has to say, as the history kept it: that of the patched folder
   * from which the image that was loaded last was built. Where no load is on record, of the last
   * patched folder; where the load's folder is not known, the name alone.
   */
  public static Map<String, String> expected(PrinterProfile profile, Timeline past) {
    Map<String, String> expected = new LinkedHashMap<>();
    if (profile.name() != null && !profile.name().isBlank()) {
      expected.put(NAME, profile.name());
    }
    export(past)
        .ifPresent(
            export ->
                export
                    .facts()
                    .path("identity")
                    .properties()
                    .forEach(each -> expected.put(each.getKey(), each.getValue().asString(""))));
    expected.values().removeIf(String::isBlank);
    return expected;
  }

  /**
   * The same from the history beside a profile; the name alone where that cannot be read.
   *
   * @param file null where the profile is in no file
   */
  public static Map<String, String> expected(PrinterProfile profile, Path file) {
    try {
      return expected(profile, file == null ? NOTHING : HistoryFile.beside(file).read());
    } catch (IOException unreadable) {
      // A proof needs no history; whoever writes into it next is told what is wrong with it.
      return expected(profile, NOTHING);
    }
  }

  private static Optional<Event> export(Timeline past) {
    Optional<Event> load = past.last(EventKind.LOAD);
    return load.isEmpty()
        ? past.last(EventKind.EXPORT)
        : LoadedExport.of(past.events(), load.get());
  }

  private static Optional<String> text(FirmwareFolder folder, NameEntry entry) {
    Optional<FolderPlace> place = FolderPlace.find(folder, entry);
    if (place.isEmpty()) {
      return Optional.empty();
    }
    String raw = "";
    if (place.get() instanceof FolderPlace.InHeader header && header.setting().on()) {
      raw = header.setting().value();
    } else if (place.get() instanceof FolderPlace.InKey key) {
      raw = key.entry().value();
    } else if (place.get() instanceof FolderPlace.InFlags flags) {
      raw = flags.value();
    }
    String text = raw.strip().replaceAll("^\"|\"$", "").strip();
    return text.isEmpty() ? Optional.empty() : Optional.of(text);
  }
}
