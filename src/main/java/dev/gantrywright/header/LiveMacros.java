package dev.gantrywright.header;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The macros that are live at the end of a file, as a compiler would list them: a name without a
 * definition counts as not defined, and only the language's mandatory macros are predefined (and
 * not listed). Safe for use by several threads.
 */
public final class LiveMacros {
  private final SearchPath includes;
  private final SourceFile commandLine;
  private final SourceFile c;
  private final SourceFile cpp;
  private final Unknowns unknowns = Unknowns.undefined();

  /**
   * Prepares listings.
   *
   * @param defines {@code NAME=VALUE} or {@code NAME}, as compilers take them after {@code -D}
   * @param include folders to search for included headers, in their order
   */
  public LiveMacros(List<String> defines, List<Path> include) {
    this.includes = new SearchPath(include);
    this.commandLine = commandLine(defines);
    this.c = builtIn(Language.C);
    this.cpp = builtIn(Language.CPP);
  }

  /**
   * Lists the macros live at the end of a file.
   *
   * @throws IOException when the file cannot be read
   */
  public MacroListing of(Path file) throws IOException {
    SourceFile source = SourceFile.of(file.toString(), FileBytes.read(file));
    Language language = Language.of(file.toString());
    SourceFile builtIn = language == Language.C ? c : cpp;
    int expected = source.table().size();
    Evaluation evaluation = new Evaluation(language, includes, unknowns, null, true, expected);
    evaluation.include(builtIn, null, -1);
    evaluation.include(commandLine, null, -1);
    evaluation.include(source, null, -1);
    MacroTable.Symbol[] live =
        NameSort.sorted(evaluation.macros().defined(new NotListed(builtIn, source)));
    ByteSink out = new ByteSink(source.bytes().length / 2);
    MacroPrinter printer = new MacroPrinter(out);
    for (MacroTable.Symbol symbol : live) {
      printer.print(symbol);
    }
    List<Problem> problems = new ArrayList<>(source.problems());
    problems.addAll(evaluation.problems());
    return new MacroListing(file, out, problems);
  }

  /** The files whose macros are there before the first line of a header. */
  private record NotListed(SourceFile builtIn, SourceFile source) implements Predicate<SourceFile> {
    @Override
    public boolean test(SourceFile file) {
      return file == builtIn || file != source && isPredefinition(file);
    }

    /** Compilers for Unix-like systems include this header by themselves. */
    private static boolean isPredefinition(SourceFile file) {
      return file.path().endsWith("/stdc-predef.h");
    }
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
