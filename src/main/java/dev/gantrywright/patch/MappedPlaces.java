package dev.gantrywright.patch;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.NameEntry;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Where the entries of a name map stand in one folder, each looked for once. Serves one thread at a
 * time.
 */
final class MappedPlaces {
  private final FirmwareFolder folder;
  private final Map<NameEntry, Optional<FolderPlace>> places = new HashMap<>();
  private final Map<String, Optional<String>> replacements = new HashMap<>();

  MappedPlaces(FirmwareFolder folder) {
    this.folder = folder;
  }

  FirmwareFolder folder() {
    return folder;
  }

  /** The place of an entry; empty where the folder has none. */
  Optional<FolderPlace> of(NameEntry entry) {
    return places.computeIfAbsent(entry, wanted -> FolderPlace.find(folder, wanted));
  }

  /** The replacement that a macro has in the folder; empty where it has none. */
  Optional<String> replacement(String name) {
    return replacements.computeIfAbsent(name, wanted -> FolderPlace.replacement(folder, wanted));
  }
}
