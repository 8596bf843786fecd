package dev.gantrywright.ui.state;

import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.PlannedLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The plans of one folder in rows, file by file. Serves one thread at a time; a file whose planned
 * lines are those of the plan before keeps its rows.
 */
final class DiffSheet {
  private final FadedLines fades;
  private final Map<String, DiffFile> files = new HashMap<>();

  DiffSheet(FadedLines fades) {
    this.fades = fades;
  }

  /** Long stretches of unchanged lines folded. */
  List<DiffRow> folded(PatchPlan plan) {
    List<DiffRow> rows = new ArrayList<>();
    byFile(plan).forEach((file, lines) -> rows.addAll(file(plan, file).folded(lines)));
    return rows;
  }

  /** Every line of the files that change. */
  List<DiffRow> whole(PatchPlan plan) {
    List<DiffRow> rows = new ArrayList<>();
    byFile(plan).forEach((file, lines) -> rows.addAll(file(plan, file).whole(lines)));
    return rows;
  }

  private static Map<String, List<PlannedLine>> byFile(PatchPlan plan) {
    Map<String, List<PlannedLine>> byFile = new TreeMap<>();
    plan.lines()
        .forEach(line -> byFile.computeIfAbsent(line.file(), f -> new ArrayList<>()).add(line));
    return byFile;
  }

  private DiffFile file(PatchPlan plan, String path) {
    return files.computeIfAbsent(
        path, wanted -> new DiffFile(wanted, plan.before().get(wanted), fades.in(wanted)));
  }
}
