package dev.gantrywright.header;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The definitions that a file and the headers that it includes make, each with its place and state;
 * either as a compiler sees them or with unknown names left open.
 */
public final class MacroView {
  /**
   * One definition.
   *
   * @param name macro name
   * @param parameters of a function-like macro, or null
   * @param value replacement text
   * @param file where it stands
   * @param line counted from 1
   * @param state live, dead or open
   * @param reason the chain of conditions that says why, or empty
   */
  public record Row(
      String name,
      List<String> parameters,
      String value,
      String file,
      int line,
      State state,
      String reason) {}

  /** The definitions of one file, by name, and what went wrong on the way. */
  public record Table(List<Row> rows, List<Problem> problems) {}

  private final List<String> defines;
  private final List<Path> include;
  private final boolean open;

  /**
   * Prepares views.
   *
   * @param defines as for {@link LiveMacros}
   * @param include folders to search for included headers, in their order
   * @param open whether an unknown name is unknown; otherwise it counts as not defined and only
   *     live definitions are shown
   */
  public MacroView(List<String> defines, List<Path> include, boolean open) {
    this.defines = List.copyOf(defines);
    this.include = List.copyOf(include);
    this.open = open;
  }

  /**
   * The definitions that a file makes.
   *
   * @throws IOException when the file cannot be read
   */
  public Table of(Path path) throws IOException {
    SourceFile file = SourceFile.of(path.toString(), FileBytes.read(path));
    Set<SourceFile> seen = new LinkedHashSet<>();
    seen.add(file);
    SearchPath search = new SearchPath(include);
    IncludeResolver includes =
        (header, angled, from, next) -> {
          SourceFile found = search.find(header, angled, from, next);
          if (found != null) {
            seen.add(found);
          }
          return found;
        };
    SourceFile given = LiveMacros.commandLine(defines);
    Language language = Language.of(path.toString());
    Visits visits = new Visits();
    Unknowns unknowns =
        open
            ? Unknowns.open(name -> seen.stream().anyMatch(f -> f.names().contains(name)))
            : Unknowns.undefined();
    Evaluation evaluation = new Evaluation(language, includes, unknowns, visits, true);
    SourceFile builtIn = LiveMacros.builtIn(language);
    evaluation.include(builtIn, null, -1);
    evaluation.include(given, null, -1);
    evaluation.include(file, null, -1);
    seen.add(given);
    List<Row> rows = new ArrayList<>();
    for (SourceFile source : seen) {
      rows(source, visits, evaluation.macros(), rows);
    }
    rows.sort(Comparator.comparing(Row::name).thenComparing(Row::file).thenComparing(Row::line));
    List<Problem> problems = new ArrayList<>(file.problems());
    problems.addAll(evaluation.problems());
    return new Table(List.copyOf(rows), List.copyOf(problems));
  }

  private void rows(SourceFile source, Visits visits, MacroTable atEnd, List<Row> out) {
    if (!visits.entered(source)) {
      return;
    }
    HeaderDocument document = HeaderDocument.within(source, visits);
    DirectiveTable table = source.table();
    for (int row = 0; row < table.size(); row++) {
      boolean named = table.nameEnd(row) > table.nameStart(row);
      if (table.kind(row) != DirectiveKind.DEFINE || !named) {
        continue;
      }
      MacroTable.Symbol symbol = atEnd.find(source.name(row));
      boolean inForce = symbol != null && symbol.file() == source && symbol.directive() == row;
      if (open || inForce) {
        out.add(row(document, row));
      }
    }
  }

  private static Row row(HeaderDocument document, int row) {
    SourceFile source = document.source();
    MacroBody body = source.tokens().macro(row);
    byte[] name = source.name(row).getBytes(StandardCharsets.ISO_8859_1);
    return new Row(
        new String(name, StandardCharsets.UTF_8),
        body == null ? null : body.parameters(),
        body == null ? "" : Token.spell(body.tokens()),
        source.path(),
        source.lineOf(source.table().start(row)),
        document.state(row),
        document.reason(row));
  }
}
