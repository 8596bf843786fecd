package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One evaluation of a whole folder.
 *
 * @param macros the macros in force at its end
 * @param visits what was seen of each file
 * @param problems what went wrong
 */
record FolderEvaluation(MacroTable macros, Visits visits, List<Problem> problems) {

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
    return new FolderEvaluation(evaluation.macros(), visits, List.copyOf(evaluation.problems()));
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
