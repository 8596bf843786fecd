package dev.gantrywright.header;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/**
 * The macros that are live at the end of a file, as a compiler would list them: a name without a
 * definition counts as not defined, and only the language's mandatory macros are predefined (and
 * not listed).
 */
public final class LiveMacros {
  private final List<String> defines;
  private final SearchPath includes;

  /**
   * Prepares listings.
   *
   * @param defines {@code NAME=VALUE} or {@code NAME}, as compilers take them after {@code -D}
   * @param include folders to search for included headers
   */
  public LiveMacros(List<String> defines, List<Path> include) {
    this.defines = List.copyOf(defines);
    this.includes = new SearchPath(include);
  }

  /**
   * One file's macros.
   *
   * @param file the file
   * @param lines {@code #define} lines sorted by name, each ended by a line feed
   * @param problems what went wrong on the way
   */
  public record Listing(Path file, byte[] lines, List<Problem> problems) {}

  /** Lists the macros live at the end of a file. */
  public Listing of(Path file) throws IOException {
    SourceFile source = SourceFile.of(file.toString(), Files.readAllBytes(file));
    Language language = Language.of(file.toString());
    Evaluation evaluation = new Evaluation(language, includes, name -> true, null, true);
    SourceFile builtIn = builtIn(language);
    evaluation.include(builtIn, null, -1);
    evaluation.include(commandLine(), null, -1);
    evaluation.include(source, null, -1);
    List<Problem> problems = new ArrayList<>(source.problems());
    problems.addAll(evaluation.problems());
    MacroTable.Symbol[] live =
        evaluation.macros().symbols().stream()
            .filter(s -> s.defined() && s.file() != builtIn)
            .toArray(MacroTable.Symbol[]::new);
    Arrays.sort(live, Comparator.comparing(MacroTable.Symbol::name));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    MacroPrinter printer = new MacroPrinter(out);
    for (MacroTable.Symbol symbol : live) {
      printer.print(symbol);
    }
    return new Listing(file, out.toByteArray(), List.copyOf(problems));
  }

  private static SourceFile builtIn(Language language) {
    StringBuilder text = new StringBuilder();
    for (Map.Entry<String, String> macro : language.mandatory().entrySet()) {
      text.append("#define ").append(macro.getKey()).append(' ').append(macro.getValue());
      text.append('\n');
    }
    return SourceFile.of("(language)", text.toString().getBytes(StandardCharsets.ISO_8859_1));
  }

  private SourceFile commandLine() {
    StringBuilder text = new StringBuilder();
    for (String define : defines) {
      int equals = define.indexOf('=');
      String line =
          equals < 0
              ? define + " 1"
              : define.substring(0, equals) + " " + define.substring(equals + 1);
      text.append("#define ").append(line.replaceAll("[\\r\\n].*", "")).append('\n');
    }
    return SourceFile.of("(command line)", text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
