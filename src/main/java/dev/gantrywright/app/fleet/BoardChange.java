package dev.gantrywright.app.fleet;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.record.Sha256;
import dev.gantrywright.report.ProfileFindings;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Whom a change of one board sheet touches. */
public final class BoardChange {
  private BoardChange() {}

  /**
   * One printer that uses the sheet.
   *
   * @param come findings that the new sheet brings
   * @param go findings that it settles
   */
  public record Row(String file, String printer, List<Finding> come, List<Finding> go) {
    public Row {
      come = List.copyOf(come);
      go = List.copyOf(go);
    }

    /** Whether it gains an error. */
    public boolean worse() {
      return come.stream().anyMatch(finding -> finding.level() == Level.ERROR);
    }
  }

  /**
   * The printers whose profiles name the sheet: the same file, or one with the same bytes.
   *
   * @param instead the sheet as it would be; null to list the printers only
   */
  public static List<Row> of(Fleet fleet, Checking checking, Path sheet, BoardSheet instead)
      throws IOException {
    Path wanted = sheet.toRealPath();
    String bytes = Sha256.of(Files.readAllBytes(wanted));
    List<Row> rows = new ArrayList<>();
    checking.stream(
        fleet.files(),
        null,
        result -> row(fleet, checking, result, new Named(wanted, bytes), instead),
        row -> {
          if (row.printer() != null) {
            rows.add(row);
          }
          return true;
        });
    return rows;
  }

  private record Named(Path file, String sha256) {
    boolean by(OpenPrinter printer) {
      String name = printer.profile().board().sheet();
      if (name == null || printer.sheet() == null) {
        return false;
      }
      try {
        Path named = printer.file().toAbsolutePath().resolveSibling(name).toRealPath();
        return named.equals(file) || Sha256.of(Files.readAllBytes(named)).equals(sha256);
      } catch (IOException gone) {
        return false;
      }
    }
  }

  /** A row without a printer stands for one that the sheet does not touch. */
  private static Row row(
      Fleet fleet, Checking checking, Checking.Result result, Named sheet, BoardSheet instead) {
    OpenPrinter printer = result.printer();
    if (printer == null || !sheet.by(printer)) {
      return new Row("", null, List.of(), List.of());
    }
    String file = fleet.name(result.file());
    if (instead == null) {
      return new Row(file, printer.title(), List.of(), List.of());
    }
    OpenPrinter changed =
        new OpenPrinter(
            printer.file(),
            printer.profile(),
            instead,
            printer.folder(),
            printer.names(),
            printer.unreadFolder(),
            printer.problems());
    Map<String, Finding> before = byText(result.findings());
    Map<String, Finding> after = byText(checking.check(changed));
    return new Row(file, printer.title(), only(after, before), only(before, after));
  }

  private static Map<String, Finding> byText(ProfileFindings findings) {
    return findings.open().stream()
        .collect(
            Collectors.toMap(
                finding -> finding.key() + "\n" + finding.evidence(),
                Function.identity(),
                (one, other) -> one,
                java.util.LinkedHashMap::new));
  }

  private static List<Finding> only(Map<String, Finding> here, Map<String, Finding> there) {
    return here.entrySet().stream()
        .filter(entry -> !there.containsKey(entry.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }
}
