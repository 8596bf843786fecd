package dev.gantrywright.names;

import dev.gantrywright.header.Setting;
import dev.gantrywright.names.FolderTexts.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds the board constants of a folder. */
final class BoardLister {
  private final FolderTexts folder;
  private final McuNames mcus;

  BoardLister(FolderTexts folder, McuNames mcus) {
    this.folder = folder;
    this.mcus = mcus;
  }

  /**
   * The boards, without the targets that fit them.
   *
   * @param chosen the place that says which board it is; null where none was found
   */
  List<BoardConstant> list(Candidate chosen) {
    List<Placed> family = List.of();
    String now = "";
    if (chosen != null && chosen.bareSwitch()) {
      now = chosen.macro();
      family = family(now, true);
    } else if (chosen != null) {
      now = chosen.text().strip();
      family = folder.named(now).isPresent() ? family(now, false) : List.of();
    }
    if (family.size() < 2) {
      family = byComment();
    }
    List<String> numbers = family.stream().map(placed -> placed.setting().value()).toList();
    List<String> names = family.stream().map(placed -> placed.setting().name()).toList();
    List<BoardConstant> boards = new ArrayList<>();
    for (Placed placed : family) {
      boards.add(board(placed, names, numbers, now));
    }
    return boards;
  }

  private BoardConstant board(Placed placed, List<String> names, List<String> numbers, String now) {
    Setting setting = placed.setting();
    List<String> notes = new ArrayList<>(NearMiss.notes(setting.name(), names));
    String number = setting.value().isEmpty() ? null : setting.value();
    for (int i = 0; i < names.size(); i++) {
      if (number != null && !names.get(i).equals(setting.name()) && numbers.get(i).equals(number)) {
        notes.add("has the same number as " + names.get(i));
      }
    }
    if (folder.every(setting.name()).size() > 1) {
      notes.add("is defined " + folder.every(setting.name()).size() + " times");
    }
    String comment =
        placed.trailing().isEmpty() && placed.leadIsOwn() ? placed.lead() : placed.trailing();
    String mcu = mcus.find(comment).or(() -> mcus.find(setting.name())).orElse(null);
    boolean chosen = setting.name().equals(now) || (number != null && number.equals(now));
    return new BoardConstant(
        setting.name(),
        number,
        comment,
        mcu,
        setting.file(),
        setting.line(),
        List.of(),
        chosen,
        notes);
  }

  /**
   * The constants, or the bare switches, that share the shortest beginning that is theirs alone.
   */
  private List<Placed> family(String name, boolean switches) {
    List<String> words = Folded.identifier(name);
    String rest = name;
    int length = 0;
    for (int i = 0; i < words.size(); i++) {
      int at = rest.toLowerCase(java.util.Locale.ROOT).indexOf(words.get(i));
      if (at < 0) {
        break;
      }
      length += at + words.get(i).length();
      rest = name.substring(length);
      String start = name.substring(0, length);
      List<Placed> kin = new ArrayList<>();
      boolean pure = true;
      for (Placed placed : folder.settings()) {
        if (beginsWith(placed.setting().name(), start)) {
          boolean fits = switches ? bare(placed) : number(placed);
          pure &= fits || placed.setting().name().equals(name);
          kin.add(placed);
        }
      }
      if (pure && kin.size() >= 2 && i < words.size() - 1) {
        return kin;
      }
    }
    return List.of();
  }

  private static boolean beginsWith(String name, String start) {
    return name.startsWith(start)
        && name.length() > start.length()
        && (!Character.isLowerCase(name.charAt(start.length())));
  }

  private static boolean bare(Placed placed) {
    return placed.setting().kind() == Setting.Kind.FLAG;
  }

  private static boolean number(Placed placed) {
    OptionalDouble value = Arithmetic.of(placed.setting().value());
    return value.isPresent() && value.getAsDouble() == Math.rint(value.getAsDouble());
  }

  /** Without a choice to go by: numbers or switches beside which a part is named. */
  private List<Placed> byComment() {
    List<Placed> found = new ArrayList<>();
    for (Placed placed : folder.settings()) {
      Optional<String> mcu = mcus.find(placed.trailing());
      if (mcu.isPresent() && (number(placed) || bare(placed))) {
        found.add(placed);
      }
    }
    return found.size() < 2 ? List.of() : found;
  }
}
