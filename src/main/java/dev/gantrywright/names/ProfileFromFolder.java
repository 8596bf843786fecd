package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A new profile with the values that a firmware folder holds.
 *
 * @param profile the profile
 * @param taken the fields whose value came from the folder
 * @param notes what was not taken and why, one line each
 */
public record ProfileFromFolder(PrinterProfile profile, List<String> taken, List<String> notes) {
  public ProfileFromFolder {
    taken = List.copyOf(taken);
    notes = List.copyOf(notes);
  }

  /**
   * Reads every value that the map is sure of.
   *
   * @param name the profile's name where the folder gives none
   */
  public static ProfileFromFolder read(FirmwareFolder folder, NameMap map, String name)
      throws ProfileProblem {
    PrinterProfile profile =
        ProfileValues.with(
            ProfileStore.parse("profile", "{\"format\": 1}".getBytes(StandardCharsets.UTF_8)),
            "name",
            name);
    List<String> taken = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    FolderValue values = new FolderValue(folder);
    for (Map.Entry<String, NameEntry> one : map.fields().entrySet()) {
      String path = one.getKey();
      NameEntry entry = one.getValue();
      if (entry.macro() == null) {
        continue;
      }
      if (!entry.sure()) {
        notes.add(path + ": left open; the map is not sure of " + entry.macro());
        continue;
      }
      Optional<JsonNode> value = values.of(path, entry);
      if (value.isEmpty()) {
        notes.add(path + ": left open; " + why(entry, values));
        continue;
      }
      try {
        profile = ProfileValues.with(profile, path, value.get());
        taken.add(path);
      } catch (ProfileProblem outside) {
        notes.add(path + ": left open; " + outside.getMessage());
      }
    }
    return new ProfileFromFolder(mcu(profile, map, taken), taken, notes);
  }

  private static String why(NameEntry entry, FolderValue values) {
    return values
        .text(entry)
        .map(
            text ->
                "what "
                    + entry.macro()
                    + " says is not known: "
                    + (text.isEmpty() ? "(off)" : text))
        .orElse("the folder has no " + entry.macro());
  }

  private static PrinterProfile mcu(PrinterProfile profile, NameMap map, List<String> taken)
      throws ProfileProblem {
    if (profile.board().mcu() != null) {
      return profile;
    }
    Optional<String> mcu =
        map.boards().stream()
            .filter(BoardConstant::chosen)
            .map(BoardConstant::mcu)
            .filter(java.util.Objects::nonNull)
            .findFirst();
    if (mcu.isEmpty()) {
      return profile;
    }
    taken.add("board.mcu");
    return ProfileValues.with(profile, "board.mcu", mcu.get());
  }
}
