package dev.gantrywright.ui.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.FolderValue;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.ui.state.ProfileDesk;
import java.util.Optional;

/** What stands in the folder where a field's name leads. */
final class FolderLine {
  private static final int LONGEST = 160;

  private FolderLine() {}

  /** The value's text there; empty for a bare definition. */
  static Optional<String> of(NamesDesk desk, NameEntry entry) {
    return desk.folder()
        .flatMap(folder -> FolderPlace.find(folder, entry))
        .map(FolderLine::text)
        .map(text -> text.strip().replaceAll("\\s+", " "))
        .filter(text -> !text.isEmpty())
        .map(text -> text.length() > LONGEST ? text.substring(0, LONGEST) + " …" : text);
  }

  private static String text(FolderPlace place) {
    if (place instanceof FolderPlace.InHeader header) {
      return header.raw();
    }
    return place instanceof FolderPlace.InFlags flags
        ? flags.value()
        : ((FolderPlace.InKey) place).entry().value();
  }

  /** The value as the profile would say it; empty where the name map does not tell. */
  static Optional<String> value(NamesDesk desk, String path, NameEntry entry) {
    Optional<FirmwareFolder> folder = desk.folder();
    return folder.flatMap(read -> new FolderValue(read).of(path, entry).map(ProfileDesk::quoted));
  }
}
