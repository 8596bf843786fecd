package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.StringNode;

/** Reads what a folder gives for a profile field. */
public final class FolderValue {
  private final FirmwareFolder folder;

  public FolderValue(FirmwareFolder folder) {
    this.folder = folder;
  }

  /**
   * The field's value as the folder has it, in the field's own unit and spelling.
   *
   * @return empty where the folder does not say: the place is gone, commented out, or not
   *     understood
   */
  public Optional<JsonNode> of(String path, NameEntry entry) {
    if (!entry.switches().isEmpty()) {
      return entry.switches().entrySet().stream()
          .filter(one -> folder.live(one.getValue()).isPresent())
          .findFirst()
          .map(one -> StringNode.valueOf(one.getKey()));
    }
    Spelling spelling = new Spelling(path, entry, name -> FolderPlace.replacement(folder, name));
    return FolderPlace.find(folder, entry).flatMap(place -> read(place, entry, spelling));
  }

  /** The text that stands in the entry's place; empty for a bare switch. */
  public Optional<String> text(NameEntry entry) {
    return FolderPlace.find(folder, entry).flatMap(place -> text(place, entry));
  }

  private static Optional<JsonNode> read(FolderPlace place, NameEntry entry, Spelling spelling) {
    if (place instanceof FolderPlace.InHeader header
        && header.setting().kind() == Setting.Kind.FLAG) {
      return spelling.readSwitch(header.setting().on());
    }
    if (place instanceof FolderPlace.InHeader header && !header.setting().on()) {
      return Optional.empty();
    }
    return text(place, entry).flatMap(spelling::read);
  }

  private static Optional<String> text(FolderPlace place, NameEntry entry) {
    String whole;
    if (place instanceof FolderPlace.InHeader header) {
      whole = entry.element() == null ? header.setting().value() : header.raw();
    } else if (place instanceof FolderPlace.InFlags flags) {
      whole = flags.value();
    } else {
      whole = ((FolderPlace.InKey) place).entry().value();
    }
    if (entry.element() == null) {
      return Optional.of(whole);
    }
    ListParts list = ListParts.of(whole);
    int index = entry.element();
    return index >= 0 && index < list.parts().size()
        ? Optional.of(list.parts().get(index).text())
        : Optional.empty();
  }
}
