package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What became of an old release's settings in a new one, and the name map carried along. Every
 * setting of either release has a line, so that nothing is dropped in silence.
 *
 * @param lines one for each setting of the old folder, then one for each that is new
 * @param map the old map with its places brought up to the new folder
 */
public record CarryOver(List<Line> lines, NameMap map) {
  /** What became of a setting. */
  public enum Fate {
    KEPT,
    RENAMED,
    GONE,
    NEW
  }

  /**
   * One setting.
   *
   * @param oldName empty where it is new
   * @param newName empty where it is gone
   * @param confidence of a renaming, 0 to 1; 1 otherwise
   * @param changes what else changed: the default, the type, the unit; empty where nothing did
   * @param fields profile fields that it carries
   */
  public record Line(
      Fate fate,
      String oldName,
      String newName,
      String file,
      int line,
      double confidence,
      List<String> changes,
      List<String> fields) {
    public Line {
      changes = List.copyOf(changes);
      fields = List.copyOf(fields);
    }

    /** The line as text. */
    @Override
    public String toString() {
      String what =
          switch (fate) {
            case KEPT -> "kept " + newName;
            case RENAMED ->
                String.format(
                    java.util.Locale.ROOT,
                    "renamed %s to %s (%.0f %%)",
                    oldName,
                    newName,
                    100 * confidence);
            case GONE -> "gone " + oldName;
            case NEW -> "new " + newName;
          };
      String more = changes.isEmpty() ? "" : ": " + String.join(", ", changes);
      String carries = fields.isEmpty() ? "" : " [" + String.join(", ", fields) + "]";
      return file + ":" + line + ": " + what + more + carries;
    }
  }

  /** From here on a renaming is taken as sure and the map follows it. */
  public static final double SURE = Confidence.SURE;

  public CarryOver {
    lines = List.copyOf(lines);
  }

  /**
   * Compares two releases.
   *
   * @param oldMap the name map of the old folder
   */
  public static CarryOver of(FirmwareFolder before, NameMap oldMap, FirmwareFolder after) {
    List<ReleaseSetting> old = ReleaseSetting.of(before);
    List<ReleaseSetting> now = ReleaseSetting.of(after);
    Map<String, ReleaseSetting> byName = new HashMap<>();
    now.forEach(setting -> byName.put(setting.key(), setting));
    Map<String, List<String>> fields = fields(oldMap);
    Set<String> taken = new HashSet<>();
    List<ReleaseSetting> lost = new ArrayList<>();
    Map<String, Line> lines = new LinkedHashMap<>();
    for (ReleaseSetting setting : old) {
      lines.put(setting.key(), null);
      ReleaseSetting same = byName.get(setting.key());
      if (same == null) {
        lost.add(setting);
      } else {
        taken.add(same.key());
        lines.put(setting.key(), line(Fate.KEPT, setting, same, 1, fields));
      }
    }
    List<ReleaseSetting> fresh = now.stream().filter(s -> !taken.contains(s.key())).toList();
    Map<ReleaseSetting, Renaming> renamed = Renaming.of(lost, fresh);
    for (ReleaseSetting setting : lost) {
      Renaming renaming = renamed.get(setting);
      if (renaming == null) {
        lines.put(setting.key(), line(Fate.GONE, setting, null, 1, fields));
      } else {
        taken.add(renaming.to().key());
        lines.put(
            setting.key(),
            line(Fate.RENAMED, setting, renaming.to(), renaming.confidence(), fields));
      }
    }
    List<Line> all = new ArrayList<>(lines.values());
    for (ReleaseSetting setting : now) {
      if (!taken.contains(setting.key())) {
        all.add(
            new Line(
                Fate.NEW,
                "",
                setting.name(),
                setting.file(),
                setting.line(),
                1,
                List.of("default " + setting.shown()),
                List.of()));
      }
    }
    return new CarryOver(all, map(oldMap, all, after));
  }

  private static Map<String, List<String>> fields(NameMap map) {
    Map<String, List<String>> fields = new HashMap<>();
    map.fields()
        .forEach(
            (path, entry) -> {
              if (entry.macro() != null) {
                fields.computeIfAbsent(entry.macro(), name -> new ArrayList<>()).add(path);
              }
              entry.switches().values().stream()
                  .filter(name -> !name.equals(entry.macro()))
                  .forEach(
                      name -> fields.computeIfAbsent(name, key -> new ArrayList<>()).add(path));
            });
    return fields;
  }

  private static Line line(
      Fate fate,
      ReleaseSetting old,
      ReleaseSetting now,
      double confidence,
      Map<String, List<String>> fields) {
    ReleaseSetting at = now == null ? old : now;
    return new Line(
        fate,
        old.name(),
        now == null ? "" : now.name(),
        at.file(),
        at.line(),
        confidence,
        now == null ? List.of("was " + old.shown()) : old.changes(now),
        fields.getOrDefault(old.name(), List.of()));
  }

  /** The old map's entries at their new places; what is gone or doubtful is not sure any more. */
  private static NameMap map(NameMap old, List<Line> lines, FirmwareFolder after) {
    Map<String, Line> byOld = new HashMap<>();
    lines.stream()
        .filter(line -> !line.oldName().isEmpty())
        .forEach(line -> byOld.put(line.oldName(), line));
    NameMap map = old;
    for (Map.Entry<String, NameEntry> one : old.fields().entrySet()) {
      NameEntry entry = one.getValue();
      Line line = entry.macro() == null ? null : byOld.get(entry.macro());
      if (line == null) {
        continue;
      }
      map =
          line.newName().isEmpty()
              ? map.without(one.getKey())
              : map.with(one.getKey(), moved(entry, line, byOld, after));
    }
    return map;
  }

  private static NameEntry moved(
      NameEntry entry, Line line, Map<String, Line> byOld, FirmwareFolder after) {
    NameEntry moved = entry.at(line.newName(), line.file(), line.line());
    Optional<FolderPlace> place = FolderPlace.find(after, moved);
    if (place.isPresent() && place.get() instanceof FolderPlace.InHeader header) {
      moved = moved.at(line.newName(), header.setting().file(), header.setting().line());
    }
    Map<String, String> values = renamed(entry.values(), byOld);
    moved = moved.meaning(moved.meaning(), values).switches(renamed(entry.switches(), byOld));
    boolean changed =
        line.changes().stream()
            .anyMatch(change -> change.startsWith("type") || change.startsWith("unit"));
    boolean doubtful = line.fate() == Fate.RENAMED && line.confidence() < SURE;
    if (changed || doubtful) {
      moved = moved.judged(Math.min(entry.confidence(), line.confidence()), false);
    }
    return moved;
  }

  private static Map<String, String> renamed(Map<String, String> texts, Map<String, Line> byOld) {
    Map<String, String> out = new LinkedHashMap<>();
    texts.forEach(
        (value, text) -> {
          Line line = byOld.get(text);
          out.put(value, line == null || line.newName().isEmpty() ? text : line.newName());
        });
    return out;
  }
}
