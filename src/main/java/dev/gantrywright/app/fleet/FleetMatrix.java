package dev.gantrywright.app.fleet;

import dev.gantrywright.app.Checking;
import dev.gantrywright.report.ProfileFindings;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Printers against findings.
 *
 * @param rows one for each printer, in the order of their files
 * @param rules the rules that found something, by id, with how many printers each touches
 */
public record FleetMatrix(List<Row> rows, List<Touched> rules) {
  /**
   * One printer.
   *
   * @param found finding id to its worst level there
   * @param waived how many findings are set aside
   * @param problem why the profile could not be read; empty where it could
   */
  public record Row(
      String file, String printer, Map<String, Level> found, int waived, String problem) {
    /** How many ids stand at a level. */
    public long count(Level level) {
      return found.values().stream().filter(level::equals).count();
    }
  }

  /**
   * One rule.
   *
   * @param printers how many it touches
   */
  public record Touched(String id, String slug, Level worst, int printers) {}

  public FleetMatrix {
    rows = List.copyOf(rows);
    rules = List.copyOf(rules);
  }

  /** Checks every printer of a fleet; what is kept of each is its row. */
  public static FleetMatrix of(Fleet fleet, Checking checking) {
    List<Row> rows = new ArrayList<>();
    Map<String, Touched> rules = new TreeMap<>();
    checking.stream(
        fleet.files(),
        null,
        result -> new Answer(row(fleet, result), slugs(result)),
        answer -> {
          rows.add(answer.row());
          answer.row().found().forEach((id, level) -> count(rules, id, level, answer.slugs()));
          return true;
        });
    return new FleetMatrix(rows, new ArrayList<>(rules.values()));
  }

  private record Answer(Row row, Map<String, String> slugs) {}

  private static Row row(Fleet fleet, Checking.Result result) {
    String file = fleet.name(result.file());
    if (result.findings() == null) {
      return new Row(file, "", Map.of(), 0, result.problem());
    }
    ProfileFindings findings = result.findings();
    return new Row(
        file, findings.printer(), worst(findings), findings.sorted().waived().size(), "");
  }

  static Map<String, Level> worst(ProfileFindings findings) {
    Map<String, Level> worst = new TreeMap<>();
    for (Finding finding : findings.open()) {
      worst.merge(finding.id(), finding.level(), FleetMatrix::worse);
    }
    return worst;
  }

  /** Levels are declared worst first. */
  private static Level worse(Level one, Level other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  private static Map<String, String> slugs(Checking.Result result) {
    Map<String, String> slugs = new TreeMap<>();
    if (result.findings() != null) {
      result.findings().open().forEach(finding -> slugs.put(finding.id(), finding.slug()));
    }
    return slugs;
  }

  private static void count(
      Map<String, Touched> rules, String id, Level level, Map<String, String> slugs) {
    rules.merge(
        id,
        new Touched(id, slugs.get(id), level, 1),
        (old, one) -> new Touched(id, old.slug(), worse(old.worst(), level), old.printers() + 1));
  }

  /** Whether a printer has an error. */
  public boolean errors() {
    return rows.stream().anyMatch(row -> row.count(Level.ERROR) > 0);
  }

  /** Profiles that could not be read, one line each. */
  public List<String> problems() {
    return rows.stream().map(Row::problem).filter(problem -> !problem.isEmpty()).toList();
  }
}
