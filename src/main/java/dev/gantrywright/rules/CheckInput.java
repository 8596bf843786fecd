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
 */
public record CheckInput(
    PrinterProfile profile,
    BoardSheet sheet,
    FirmwareFolder folder,
    NameMap names,
    Catalog catalog) {

  /** The same but for the profile. */
  public CheckInput with(PrinterProfile changed) {
    return new CheckInput(changed, sheet, folder, names, catalog);
  }

  /** The same but for the name map. */
  public CheckInput with(NameMap changed) {
    return new CheckInput(profile, sheet, folder, changed, catalog);
  }
}
