package dev.gantrywright.names;

import dev.gantrywright.header.Setting;
import dev.gantrywright.names.FolderTexts.Placed;
import dev.gantrywright.names.WordReader.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds choices that a folder makes by switching on one of several bare definitions. */
final class SwitchFamilies {
  /**
   * Such a choice.
   *
   * @param present the one that is on; the first where none is
   * @param switches profile value to definition
   */
  record Family(String present, Map<String, String> switches) {}

  private final FolderTexts folder;
  private final WordReader words;

  SwitchFamilies(FolderTexts folder, WordReader words) {
    this.folder = folder;
    this.words = words;
  }

  /** The boards, where each is a bare definition. */
  Optional<Family> boards() {
    Map<String, List<Placed>> groups = new LinkedHashMap<>();
    for (Placed placed : folder.settings()) {
      if (!bare(placed)) {
        continue;
      }
      String name = placed.setting().name();
      boolean board =
          speaks(words.identifier(name), "board")
              || speaks(words.comment(placed.setting().section()), "board")
              || (placed.lead().length() < 200 && speaks(words.comment(placed.lead()), "board"));
      if (board) {
        groups.computeIfAbsent(placed.setting().file(), file -> new ArrayList<>()).add(placed);
      }
    }
    for (List<Placed> group : groups.values()) {
      long on = group.stream().filter(placed -> placed.setting().on()).count();
      if (group.size() >= 2 && on <= 1) {
        Map<String, String> switches = new LinkedHashMap<>();
        group.forEach(placed -> switches.put(placed.setting().name(), placed.setting().name()));
        return Optional.of(new Family(present(group), switches));
      }
    }
    return Optional.empty();
  }

  /** The kinematics, where each kind is a bare definition. */
  Optional<Family> kinematics() {
    Map<String, String> switches = new LinkedHashMap<>();
    List<Placed> group = new ArrayList<>();
    for (Placed placed : folder.settings()) {
      if (!bare(placed)) {
        continue;
      }
      for (String kind : List.of("corexy", "delta", "cartesian")) {
        if (speaks(words.identifier(placed.setting().name()), kind)
            && !switches.containsKey(kind)) {
          switches.put(kind, placed.setting().name());
          group.add(placed);
          break;
        }
      }
    }
    long on = group.stream().filter(placed -> placed.setting().on()).count();
    return switches.size() >= 2 && on <= 1
        ? Optional.of(new Family(present(group), switches))
        : Optional.empty();
  }

  private static String present(List<Placed> group) {
    return group.stream()
        .filter(placed -> placed.setting().on())
        .findFirst()
        .orElse(group.get(0))
        .setting()
        .name();
  }

  private boolean speaks(List<Word> read, String concept) {
    int number = words.trade().concept(concept);
    return read.stream()
        .anyMatch(
            word ->
                word.hits().stream()
                    .anyMatch(hit -> hit.concept() == number && hit.strength() == 1));
  }

  private static boolean bare(Placed placed) {
    return placed.setting().kind() == Setting.Kind.FLAG;
  }
}
