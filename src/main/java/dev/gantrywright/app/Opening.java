package dev.gantrywright.app;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.FolderException;
import dev.gantrywright.header.Progress;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapException;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.rules.UnreadFolder;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Opens a printer with its board sheet, firmware folder and name map. Parts that several printers
 * share are read once by one instance, as long as they are among the last that it was asked for.
 * Safe for several threads.
 */
public final class Opening {
  /** A part that was looked for: the part, or the one line that says why there is none. */
  private record Part<T>(T value, String problem) {}

  private interface Reading<T> {
    T read(Path file) throws ProfileProblem, FolderException, NameMapException;
  }

  private final SharedParts<Part<BoardSheet>> sheets = new SharedParts<>(64);
  // A folder holds whole headers, a hundred times what a sheet takes.
  private final SharedParts<Part<FirmwareFolder>> folders = new SharedParts<>(8);
  private final SharedParts<Part<NameMap>> maps = new SharedParts<>(16);

  /** Opens a printer with the parts that its profile names. */
  public OpenPrinter open(Path file) throws ProfileProblem {
    return open(file, null);
  }

  /**
   * Opens a printer.
   *
   * @param folder the firmware folder to use; null for the one that the profile names
   * @throws ProfileProblem where the profile itself cannot be read
   */
  public OpenPrinter open(Path file, Path folder) throws ProfileProblem {
    return open(file, folder, Progress.none());
  }

  /**
   * The same.
   *
   * @param progress told of each step of the firmware folder's reading; what it throws ends it
   * @throws ProfileProblem where the profile itself cannot be read
   */
  public OpenPrinter open(Path file, Path folder, Progress progress) throws ProfileProblem {
    return open(file, ProfileStore.read(file), folder, progress);
  }

  /** Opens the parts of a profile that is already read. */
  public OpenPrinter open(Path file, PrinterProfile profile, Path folder) {
    return open(file, profile, folder, Progress.none());
  }

  /**
   * Opens the parts of a profile that is already read.
   *
   * @param progress told of each step of the firmware folder's reading, where this instance has not
   *     read it yet; what it throws ends the reading
   */
  public OpenPrinter open(Path file, PrinterProfile profile, Path folder, Progress progress) {
    List<String> problems = new ArrayList<>();
    BoardSheet sheet = part(sheets, file, profile.board().sheet(), BoardStore::read, problems);
    List<String> inVain = new ArrayList<>();
    Path chosen = folder != null ? folder : beside(file, profile.build().folder(), inVain);
    FirmwareFolder firmware =
        part(folders, chosen, at -> FirmwareFolder.read(at, Map.of(), progress), inVain);
    UnreadFolder unread =
        inVain.isEmpty()
            ? null
            : new UnreadFolder(folder != null ? null : profile.build().folder(), inVain.get(0));
    problems.addAll(inVain);
    NameMap names = part(maps, file, profile.build().names(), NameMapJson::read, problems);
    return new OpenPrinter(file, profile, sheet, firmware, names, unread, problems);
  }

  private static <T> T part(
      SharedParts<Part<T>> known,
      Path profile,
      String name,
      Reading<T> reading,
      List<String> problems) {
    return part(known, beside(profile, name, problems), reading, problems);
  }

  private static <T> T part(
      SharedParts<Part<T>> known, Path file, Reading<T> reading, List<String> problems) {
    if (file == null) {
      return null;
    }
    Part<T> part = known.get(file, at -> read(at, reading));
    if (part.problem() != null) {
      problems.add(part.problem());
    }
    return part.value();
  }

  private static <T> Part<T> read(Path file, Reading<T> reading) {
    try {
      return new Part<>(reading.read(file), null);
    } catch (ProfileProblem | FolderException | NameMapException e) {
      return new Part<>(null, e.getMessage());
    }
  }

  private static Path beside(Path profile, String name, List<String> problems) {
    if (name == null || name.isBlank()) {
      return null;
    }
    if (name.startsWith("//") || name.startsWith("\\\\")) {
      problems.add(
          "\"" + name + "\" is on another computer; copy it to this one and name it by its path");
      return null;
    }
    try {
      return profile.toAbsolutePath().resolveSibling(name).normalize();
    } catch (InvalidPathException e) {
      problems.add("\"" + name + "\" is no file name: " + e.getReason());
      return null;
    }
  }
}
