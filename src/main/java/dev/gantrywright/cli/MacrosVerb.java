package dev.gantrywright.cli;

import dev.gantrywright.header.MacroView;
import dev.gantrywright.header.MacroView.Row;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the macros that are live at the end of header files. */
@Command(
    name = "macros",
    mixinStandardHelpOptions = true,
    description =
        "Lists the macros that are live at the end of each file, as #define lines sorted by name,"
            + " spaced as C compilers list them. An unknown name counts as not defined and only"
            + " the macros that ISO C demands are predefined.")
final class MacrosVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;

  @Parameters(paramLabel = "FILE", arity = "1..*", description = "Header files.")
  private List<Path> files;

  @Option(
      names = "--define",
      paramLabel = "NAME[=VALUE]",
      description = "Predefine a macro; without a value it is 1.")
  private List<String> defines = List.of();

  @Option(
      names = "--include",
      paramLabel = "DIR",
      description = "Look for included headers here, in the order given.")
  private List<Path> include = List.of();

  @Option(
      names = "--no-system-headers",
      description = "Do not look in the folders of this computer's C compiler after those.")
  private boolean noSystemHeaders;

  @Option(
      names = "--open",
      description =
          "Treat an unknown name as unknown: every definition is live, dead or open, with the"
              + " conditions that decide.")
  private boolean open;

  @Override
  public Integer call() {
    MacrosArguments arguments =
        new MacrosArguments(files, List.copyOf(defines), List.copyOf(include), !noSystemHeaders);
    if (!open && !format.json()) {
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      int status = MacrosText.print(arguments, bytes, Printed.err(spec));
      BytePrinter.print(Printed.out(spec), bytes.toByteArray());
      return status;
    }
    List<Row> rows = new ArrayList<>();
    int status = ExitStatus.FINE;
    MacroView view = new MacroView(arguments.defines(), MacrosText.searched(arguments), open);
    for (Path file : files) {
      try {
        MacroView.Table table = view.of(file);
        rows.addAll(table.rows());
        table.problems().forEach(Printed.err(spec)::println);
      } catch (IOException e) {
        Printed.err(spec).println(MacrosText.reason(file, e));
        status = ExitStatus.USAGE;
      }
    }
    if (format.json()) {
      Printed.json(spec, Map.of("macros", rows.stream().map(MacrosVerb::json).toList()));
    } else {
      PrintWriter out = Printed.out(spec);
      rows.forEach(row -> out.println(text(row)));
    }
    return status;
  }

  private static Map<String, Object> json(Row row) {
    Map<String, Object> out = new LinkedHashMap<>();
    out.put("name", row.name());
    if (row.parameters() != null) {
      out.put("parameters", row.parameters());
    }
    out.put("value", row.value());
    out.put("file", row.file());
    out.put("line", row.line());
    out.put("state", row.state().name().toLowerCase(Locale.ROOT));
    out.put("reason", row.reason());
    return out;
  }

  private static String text(Row row) {
    String parameters =
        row.parameters() == null ? "" : "(" + String.join(",", row.parameters()) + ")";
    String state = row.state().name().toLowerCase(Locale.ROOT);
    String why = row.reason().isEmpty() ? "" : ": " + row.reason();
    String place = row.file() + ":" + row.line();
    String note = " /* " + state + ", " + place + why.replace("*/", "*\\/") + " */";
    return "#define " + row.name() + parameters + " " + row.value() + note;
  }
}
