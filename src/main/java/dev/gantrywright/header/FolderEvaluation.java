package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * One evaluation of a whole folder.
 *
 * @param macros the macros in force at its end
 * @param visits what was seen of each file
 * @param problems what went wrong
 * @param asked the names that a condition or an inclusion asked for; what the others stand for
 *     decides nothing
 */
record FolderEvaluation(
    MacroTable macros, Visits visits, List<Problem> problems, Set<String> asked) {

  static FolderEvaluation of(Collection<SourceFile> files, Map<String, String> predefined) {
    Map<String, SourceFile> byPath = new TreeMap<>();
    List<SourceFile> headers = new ArrayList<>();
    List<SourceFile> sources = new ArrayList<>();
    Language language = Language.C;
    for (SourceFile file : files) {
      if (file.binary()) {
        continue;
      }
      byPath.put(file.path(), file);
      boolean header = FolderReader.kindOf(file.path()) == FolderReader.FileKind.HEADER;
      (header ? headers : sources).add(file);
      language = Language.of(file.path()) == Language.CPP ? Language.CPP : language;
    }
    FolderIncludes includes = new FolderIncludes(byPath);
    Visits visits = new Visits();
    Evaluation evaluation =
        new Evaluation(
            language,
            includes,
            Unknowns.open(new KnownNames(headers)),
            visits,
            false,
            headers.stream().mapToInt(file -> file.table().size()).sum());
    evaluation.include(predefined(predefined), null, -1);
    for (SourceFile file : new FolderProgram(headers, sources, includes).order()) {
      if (FolderReader.kindOf(file.path()) != FolderReader.FileKind.HEADER
          || !visits.entered(file)) {
        evaluation.include(file, null, -1);
      }
    }
    return new FolderEvaluation(
        evaluation.macros(), visits, List.copyOf(evaluation.problems()), evaluation.asked());
  }

  /**
   * The evaluation of the same folder with other text in some definitions, where it is this one;
   * null where it has to be run. The macros still name the files of this one: path and row of a
   * definition are the same in both.
   *
   * @param before the files of this evaluation by path
   * @param now those of the other
   */
  FolderEvaluation carried(Map<String, SourceFile> before, Map<String, SourceFile> now) {
    if (!before.keySet().equals(now.keySet())) {
      return null;
    }
    Map<SourceFile, SourceFile> changed = new IdentityHashMap<>();
    for (Map.Entry<String, SourceFile> each : now.entrySet()) {
      SourceFile old = before.get(each.getKey());
      if (old != each.getValue()) {
        OneDefinition difference = OneDefinition.between(old, each.getValue().bytes());
        if (difference == null || decides(old, difference.row())) {
          return null;
        }
        changed.put(old, each.getValue());
      }
    }
    return new FolderEvaluation(macros, visits.moved(changed), problems, asked);
  }

  /** Whether another text of this definition might change what is seen. */
  private boolean decides(SourceFile file, int row) {
    // Whether a function-like macro counts depends on its text.
    return file.table().has(row, DirectiveTable.FUNCTION_LIKE) || asked.contains(file.name(row));
  }

  /** The definitions that the build gives, as a file of their own. */
  static SourceFile predefined(Map<String, String> values) {
    StringBuilder text = new StringBuilder();
    new TreeMap<>(values)
        .forEach(
            (name, value) ->
                text.append("#define ").append(name).append(' ').append(value).append('\n'));
    return SourceFile.of("(build)", text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
