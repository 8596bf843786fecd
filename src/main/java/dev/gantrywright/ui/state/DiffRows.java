package dev.gantrywright.ui.state;

import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.PlannedLine;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Lays a plan out in rows, file by file. */
public final class DiffRows {
  /** Unchanged lines that stay around a changed one. */
  private static final int CONTEXT = 3;

  private DiffRows() {}

  /**
   * @param whole whether unchanged lines all stay, or long stretches fold
   */
  public static List<DiffRow> of(PatchPlan plan, FadedLines fades, boolean whole) {
    List<DiffRow> rows = new ArrayList<>();
    Map<String, List<PlannedLine>> byFile = new TreeMap<>();
    plan.lines()
        .forEach(line -> byFile.computeIfAbsent(line.file(), f -> new ArrayList<>()).add(line));
    byFile.forEach(
        (file, lines) -> {
          String words = Texts.of("write.fileLines", lines.size());
          rows.add(new DiffRow(DiffRow.Kind.FILE, file, 0, file, words, "", "", ""));
          List<DiffRow> all = file(plan, fades, file, lines);
          rows.addAll(whole ? all : folded(all));
        });
    return rows;
  }

  private static List<DiffRow> file(
      PatchPlan plan, FadedLines fades, String file, List<PlannedLine> lines) {
    Map<Integer, PlannedLine> changed = new HashMap<>();
    lines.forEach(line -> changed.put(line.line(), line));
    Map<Integer, String> faded = fades.in(file);
    List<DiffRow> rows = new ArrayList<>();
    String[] before = text(plan.before().get(file)).split("\\R", -1);
    for (int i = 0; i < before.length; i++) {
      PlannedLine line = changed.get(i + 1);
      String why = faded.getOrDefault(i + 1, "");
      String shown = tabs(before[i]);
      rows.add(
          line == null
              ? new DiffRow(DiffRow.Kind.SAME, file, i + 1, shown, shown, "", "", why)
              : new DiffRow(
                  DiffRow.Kind.CHANGED,
                  file,
                  i + 1,
                  shown,
                  tabs(line.after().lines().findFirst().orElse("")),
                  line.path(),
                  cause(line),
                  why));
    }
    if (before.length > 1 && before[before.length - 1].isEmpty()) {
      rows.remove(rows.size() - 1);
    }
    return rows;
  }

  private static String cause(PlannedLine line) {
    if (line.path().isEmpty()) {
      return line.value();
    }
    StringBuilder words = new StringBuilder();
    for (String path : line.path().split(", ")) {
      words.append(words.isEmpty() ? "" : ", ").append(PlaceNames.field(path));
    }
    return words + " " + line.value();
  }

  private static List<DiffRow> folded(List<DiffRow> all) {
    List<DiffRow> rows = new ArrayList<>();
    boolean[] keep = new boolean[all.size()];
    for (int i = 0; i < all.size(); i++) {
      if (all.get(i).kind() == DiffRow.Kind.CHANGED) {
        for (int j = Math.max(0, i - CONTEXT); j <= Math.min(all.size() - 1, i + CONTEXT); j++) {
          keep[j] = true;
        }
      }
    }
    int hidden = 0;
    for (int i = 0; i < all.size(); i++) {
      if (keep[i]) {
        fold(rows, all.get(i).file(), hidden);
        hidden = 0;
        rows.add(all.get(i));
      } else {
        hidden++;
      }
    }
    fold(rows, all.isEmpty() ? "" : all.get(0).file(), hidden);
    return rows;
  }

  private static void fold(List<DiffRow> rows, String file, int hidden) {
    if (hidden > 0) {
      rows.add(
          new DiffRow(DiffRow.Kind.FOLD, file, 0, Texts.of("write.fold", hidden), "", "", "", ""));
    }
  }

  /** Text in the encoding that it most likely has; every byte shows as something. */
  private static String text(byte[] bytes) {
    String utf8 = new String(bytes, StandardCharsets.UTF_8);
    return utf8.indexOf('\ufffd') < 0 ? utf8 : new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static String tabs(String line) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '\t') {
        do {
          out.append(' ');
        } while (out.length() % 4 != 0);
      } else if (c != '\ufeff') {
        out.append(c);
      }
    }
    return out.toString();
  }

  /** Where each profile field stands among these rows, by path. */
  public static Map<String, Integer> places(List<DiffRow> rows) {
    Map<String, Integer> places = new LinkedHashMap<>();
    for (int i = 0; i < rows.size(); i++) {
      for (String path : rows.get(i).path().split(", ")) {
        if (!path.isEmpty()) {
          places.putIfAbsent(path, i);
        }
      }
    }
    return places;
  }
}
