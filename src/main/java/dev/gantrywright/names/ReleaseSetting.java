package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.FolderTexts.Placed;
import java.util.ArrayList;
import java.util.List;

/**
 * A setting or build-settings key as releases are compared by it.
 *
 * @param section of a build-settings key; empty for a macro
 * @param value its default; empty for a bare switch
 * @param on false where it is commented out
 * @param unit as its comment or name gives it; empty where neither does
 */
record ReleaseSetting(
    String name,
    String section,
    String file,
    int line,
    String value,
    boolean on,
    String comment,
    String unit) {
  static List<ReleaseSetting> of(FirmwareFolder folder) {
    WordReader words = new WordReader(TradeWords.read(), Axes.usual());
    List<ReleaseSetting> all = new ArrayList<>();
    for (Placed placed : FolderTexts.of(folder).settings()) {
      var setting = placed.setting();
      String comment = placed.trailing().isEmpty() ? placed.lead() : placed.trailing();
      String told = UnitReader.ofComment(placed.trailing());
      String unit = told.isEmpty() ? UnitReader.ofName(words.identifier(setting.name())) : told;
      all.add(
          new ReleaseSetting(
              setting.name(),
              "",
              setting.file(),
              setting.line(),
              setting.value(),
              setting.on(),
              comment,
              unit));
    }
    for (KeyText key : KeyReader.read(folder)) {
      all.add(
          new ReleaseSetting(
              key.key(),
              key.section() + "/",
              key.file(),
              key.line(),
              key.value(),
              true,
              key.comment(),
              UnitReader.ofComment(key.comment())));
    }
    return all;
  }

  String key() {
    return section + name;
  }

  String shown() {
    return value.isEmpty() ? (on ? "on" : "off") : (on ? value : value + " (off)");
  }

  /** What differs in a later release: default, type, unit. */
  List<String> changes(ReleaseSetting now) {
    List<String> changes = new ArrayList<>();
    if (!type().equals(now.type())) {
      changes.add("type " + type() + " to " + now.type());
    }
    if (!unit.equals(now.unit) && !unit.isEmpty() && !now.unit.isEmpty()) {
      changes.add("unit " + unit + " to " + now.unit);
    }
    boolean same = value.replaceAll("\\s+", "").equals(now.value.replaceAll("\\s+", ""));
    if (!same || on != now.on) {
      changes.add("default " + shown() + " to " + now.shown());
    }
    return changes;
  }

  /** The kind of value, coarsely: what a reader would have to spell otherwise. */
  String type() {
    String text = value.strip();
    if (text.isEmpty()) {
      return "switch";
    }
    ListParts list = ListParts.of(text);
    if (list.several()) {
      return "list of " + list.parts().size();
    }
    if (Arithmetic.of(text).isPresent()) {
      return "number";
    }
    if (text.startsWith("\"")) {
      return "text";
    }
    return Truth.of(text).isPresent() ? "yes or no" : "name";
  }
}
