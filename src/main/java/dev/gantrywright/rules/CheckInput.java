package dev.gantrywright.rules;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;

/**
 * Everything that rules may look at.
 *
 * @param sheet null where none is opened
 * @param folder null where none is opened
 * @param names null where none is opened
 * @param unreadFolder why a folder that was looked for is not open; null where it is, or none was
 */
public record CheckInput(
    PrinterProfile profile,
    BoardSheet sheet,
    FirmwareFolder folder,
    NameMap names,
    Catalog catalog,
    UnreadFolder unreadFolder) {

  /** Where no folder was looked for in vain. */
  public CheckInput(
      PrinterProfile profile,
      BoardSheet sheet,
      FirmwareFolder folder,
      NameMap names,
      Catalog catalog) {
    this(profile, sheet, folder, names, catalog, null);
  }

  /** The same but for the profile. */
  public CheckInput with(PrinterProfile changed) {
    return new CheckInput(changed, sheet, folder, names, catalog, unreadFolder);
  }

  /** The same but for the name map. */
  public CheckInput with(NameMap changed) {
    return new CheckInput(profile, sheet, folder, changed, catalog, unreadFolder);
  }
}
