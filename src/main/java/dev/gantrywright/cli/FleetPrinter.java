package dev.gantrywright.cli;

import dev.gantrywright.app.fleet.BoardChange;
import dev.gantrywright.app.fleet.FleetCarry;
import dev.gantrywright.app.fleet.FleetMatrix;
import dev.gantrywright.app.fleet.ReleaseOf;
import dev.gantrywright.names.CarryOver;
import dev.gantrywright.report.FindingsJson;
import dev.gantrywright.rules.Finding;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;

/** What {@code fleet} prints, as text or as one document; each method returns the exit status. */
final class FleetPrinter {
  private final CommandSpec spec;
  private final boolean json;

  FleetPrinter(CommandSpec spec, boolean json) {
    this.spec = spec;
    this.json = json;
  }

  private PrintWriter out() {
    return Printed.out(spec);
  }

  private static String count(long count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }

  int matrix(FleetMatrix matrix) {
    matrix.problems().forEach(Printed.err(spec)::println);
    if (json) {
      Printed.json(spec, FleetMatrixLayout.json(matrix));
    } else {
      FleetMatrixLayout.text(matrix).forEach(out()::println);
    }
    if (!matrix.problems().isEmpty()) {
      return ExitStatus.USAGE;
    }
    return matrix.errors() ? ExitStatus.FINDINGS : ExitStatus.FINE;
  }

  int releases(String release, List<ReleaseOf> all) {
    List<ReleaseOf> unread = all.stream().filter(row -> !row.problem().isEmpty()).toList();
    unread.forEach(row -> Printed.err(spec).println(row.problem()));
    List<ReleaseOf> running =
        all.stream().filter(row -> row.problem().isEmpty() && row.runs(release)).toList();
    if (json) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("release", release);
      document.put("printers", running.stream().map(FleetPrinter::release).toList());
      document.put("of", all.size());
      Printed.json(spec, document);
    } else {
      out().println(release + ": " + running.size() + " of " + count(all.size(), "printer"));
      for (ReleaseOf row : running) {
        out()
            .println(
                "  "
                    + row.printer()
                    + " ("
                    + row.file()
                    + "): "
                    + row.standing()
                    + row.load()
                        .map(load -> " on " + load.time().toString().substring(0, 10))
                        .orElse("; its profile names " + row.described()));
      }
    }
    return unread.isEmpty() ? ExitStatus.FINE : ExitStatus.USAGE;
  }

  private static Map<String, Object> release(ReleaseOf row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", row.file());
    json.put("printer", row.printer());
    json.put("described", row.described());
    json.put("exported", row.exported().isEmpty() ? null : row.exported());
    json.put("loaded", row.loaded().isEmpty() ? null : row.loaded());
    json.put("loadedAt", row.load().map(load -> load.time().toString()).orElse(null));
    return json;
  }

  int board(Path sheet, Path instead, List<BoardChange.Row> rows) {
    if (json) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("board", sheet.toString());
      document.put("instead", instead == null ? null : instead.toString());
      document.put("printers", rows.stream().map(FleetPrinter::change).toList());
      Printed.json(spec, document);
    } else {
      out().println(sheet + ": " + count(rows.size(), "printer"));
      for (BoardChange.Row row : rows) {
        boolean same = row.come().isEmpty() && row.go().isEmpty();
        out()
            .println(
                "  "
                    + row.printer()
                    + " ("
                    + row.file()
                    + ")"
                    + (instead != null && same ? ": no finding changes" : ""));
        row.come().forEach(finding -> out().println("    comes    " + line(finding)));
        row.go().forEach(finding -> out().println("    settled  " + line(finding)));
      }
    }
    boolean worse = rows.stream().anyMatch(BoardChange.Row::worse);
    return worse ? ExitStatus.FINDINGS : ExitStatus.FINE;
  }

  private static String line(Finding finding) {
    return finding.level().word()
        + " "
        + finding.id()
        + " "
        + finding.path()
        + ": "
        + finding.evidence();
  }

  private static Map<String, Object> change(BoardChange.Row row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", row.file());
    json.put("printer", row.printer());
    json.put("comes", row.come().stream().map(FindingsJson::finding).toList());
    json.put("settled", row.go().stream().map(FindingsJson::finding).toList());
    return json;
  }

  int carried(Path release, List<FleetCarry.Row> rows) {
    if (json) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("release", release.toString());
      document.put("printers", rows.stream().map(FleetPrinter::carried).toList());
      Printed.json(spec, document);
    } else {
      rows.forEach(this::text);
      long whole = rows.stream().filter(FleetCarry.Row::whole).count();
      out()
          .println(
              whole + " of " + count(rows.size(), "printer") + " come along whole to " + release);
    }
    boolean unread = rows.stream().anyMatch(row -> !row.problem().isEmpty());
    boolean all = rows.stream().allMatch(FleetCarry.Row::whole);
    return unread ? ExitStatus.USAGE : all ? ExitStatus.FINE : ExitStatus.FINDINGS;
  }

  private void text(FleetCarry.Row row) {
    String head = row.printer().isEmpty() ? row.file() : row.printer() + " (" + row.file() + ")";
    if (!row.problem().isEmpty()) {
      out().println(head + ": not carried: " + row.problem());
      return;
    }
    out()
        .println(
            head
                + ": from "
                + row.from()
                + "; "
                + fate(row, CarryOver.Fate.KEPT)
                + ", "
                + fate(row, CarryOver.Fate.RENAMED)
                + ", "
                + fate(row, CarryOver.Fate.GONE)
                + ", "
                + fate(row, CarryOver.Fate.NEW)
                + "; "
                + count(row.lines(), "line")
                + " to change");
    row.lost().forEach(line -> out().println("  lost: " + line));
    row.refusals().forEach(refusal -> out().println("  " + refusal));
    row.out().ifPresent(folder -> out().println("  patched folder: " + folder));
  }

  private static String fate(FleetCarry.Row row, CarryOver.Fate fate) {
    return row.fates().getOrDefault(fate, 0) + " " + fate.name().toLowerCase(Locale.ROOT);
  }

  private static Map<String, Object> carried(FleetCarry.Row row) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", row.file());
    json.put("printer", row.printer());
    json.put("from", row.from());
    Map<String, Integer> fates = new LinkedHashMap<>();
    for (CarryOver.Fate fate : CarryOver.Fate.values()) {
      fates.put(fate.name().toLowerCase(Locale.ROOT), row.fates().getOrDefault(fate, 0));
    }
    json.put("settings", fates);
    json.put("lost", row.lost());
    json.put("lines", row.lines());
    json.put("refusals", row.refusals());
    json.put("out", row.out().map(Path::toString).orElse(null));
    json.put("whole", row.whole());
    json.put("problem", row.problem().isEmpty() ? null : row.problem());
    return json;
  }
}
