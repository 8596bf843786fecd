package dev.gantrywright.header;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The macros that are live at the end of a file, as a compiler would list them: a name without a
 * definition counts as not defined, and only the language's mandatory macros are predefined (and
 * not listed). Safe for use by several threads.
 */
public final class LiveMacros {
  private final SearchPath includes;
  private final SourceFile commandLine;

  /**
   * Prepares listings.
   *
   * @param defines {@code NAME=VALUE} or {@code NAME}, as compilers take them after {@code -D}
   * @param include folders to search for included headers, in their order
   */
  public LiveMacros(List<String> defines, List<Path> include) {
    this.includes = new SearchPath(include);
    this.commandLine = commandLine(defines);
  }

  /**
   * Lists the macros live at the end of a file.
   *
   * @throws IOException when the file cannot be read
   */
  public MacroListing of(Path file) throws IOException {
    SourceFile source = SourceFile.of(file.toString(), Files.readAllBytes(file));
    Language language = Language.of(file.toString());
    Evaluation evaluation = new Evaluation(language, includes, Unknowns.undefined(), null, true);
    SourceFile builtIn = builtIn(language);
    evaluation.include(builtIn, null, -1);
    evaluation.include(commandLine, null, -1);
    evaluation.include(source, null, -1);
    MacroTable.Symbol[] live =
        evaluation.macros().defined(f -> f == builtIn || f != source && isPredefinition(f));
    NameSort.sort(live);
    ByteSink out = new ByteSink(source.bytes().length / 2);
    MacroPrinter printer = new MacroPrinter(out);
    for (MacroTable.Symbol symbol : live) {
      printer.print(symbol);
    }
    List<Problem> problems = new ArrayList<>(source.problems());
    problems.addAll(evaluation.problems());
    return new MacroListing(file, out, problems);
  }

  /** Compilers for Unix-like systems include this header by themselves before the first line. */
  private static boolean isPredefinition(SourceFile file) {
    return file.path().endsWith("/stdc-predef.h");
  }

  static SourceFile builtIn(Language language) {
    StringBuilder text = new StringBuilder();
    for (Map.Entry<String, String> macro : language.mandatory().entrySet()) {
      text.append("#define ").append(macro.getKey()).append(' ').append(macro.getValue());
      text.append('\n');
    }
    return SourceFile.of("(language)", text.toString().getBytes(StandardCharsets.ISO_8859_1));
  }

  static SourceFile commandLine(List<String> defines) {
    StringBuilder text = new StringBuilder();
    for (String define : defines) {
      int equals = define.indexOf('=');
      String line =
          equals < 0
              ? define + " 1"
              : define.substring(0, equals) + " " + define.substring(equals + 1);
      int end = line.indexOf('\n');
      text.append("#define ").append(end < 0 ? line : line.substring(0, end)).append('\n');
    }
    return SourceFile.of("(command line)", text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
