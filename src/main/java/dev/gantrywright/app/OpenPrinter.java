package dev.gantrywright.app;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.rules.UnreadFolder;
import java.nio.file.Path;
import java.util.List;

/**
 * One printer with everything that belongs to it.
 *
 * @param file the profile's file
 * @param sheet its board sheet; null where it names none or none could be read
 * @param folder its firmware folder; null where it names none or none could be read
 * @param names the folder's name map; null where there is none
 * @param unreadFolder why the folder could not be read; null where it could, or none is named
 * @param problems one line for each part that the profile names and that could not be read
 */
public record OpenPrinter(
    Path file,
    PrinterProfile profile,
    BoardSheet sheet,
    FirmwareFolder folder,
    NameMap names,
    UnreadFolder unreadFolder,
    List<String> problems) {
  public OpenPrinter {
    problems = List.copyOf(problems);
  }

  /** The same parts with another profile and name map. */
  public OpenPrinter with(PrinterProfile changed, NameMap changedNames) {
    return new OpenPrinter(file, changed, sheet, folder, changedNames, unreadFolder, problems);
  }

  /** The problems but for that of the folder, which a rule reports as a finding. */
  public List<String> unreadParts() {
    return problems.stream()
        .filter(problem -> unreadFolder == null || !problem.equals(unreadFolder.why()))
        .toList();
  }

  /** How messages and headings call it: its name, or its file where it has none. */
  public String title() {
    return profile.name() == null || profile.name().isBlank()
        ? file.getFileName().toString()
        : profile.name();
  }
}
