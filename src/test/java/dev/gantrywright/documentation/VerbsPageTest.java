package dev.gantrywright.documentation;

import static dev.gantrywright.documentation.GeneratedPage.cell;
import static dev.gantrywright.documentation.GeneratedPage.code;
import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.cli.Cli;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** Makes {@code docs/verbs.md} from the parser's own model. */
class VerbsPageTest {
  private static final String HEAD =
      """
      # The verbs

      <!-- Made from the command line's own model by VerbsPageTest; do not edit. -->

      `java -jar target/gantrywright.jar VERB …`; on Unix-like systems `target/gantrywright VERB …` does the same and starts faster. Without a verb the window opens. Every verb takes `--help`; with `--format json` one JSON document goes to standard output and nothing else.

      | exit status | means |
      | --- | --- |
      | 0 | fine |
      | 1 | findings of level error, or a comparison that failed |
      | 2 | bad usage or unreadable input; one line on standard error says what and where |
      | 3 | a device or the file system failed |
      | 130, 143 | ended by Ctrl-C, or by the system; what was being written is whole or gone |

      """;

  @Test
  void thePageIsThatOfTheParser() throws Exception {
    Map<String, CommandLine> verbs = Cli.commandLine().getSubcommands();
    StringBuilder page = new StringBuilder(HEAD);
    page.append("| verb | |\n| --- | --- |\n");
    verbs.forEach(
        (name, verb) ->
            page.append("| [")
                .append(name)
                .append("](#")
                .append(name)
                .append(") | ")
                .append(cell(Cli.firstSentence(verb.getCommandSpec())))
                .append(" |\n"));
    page.append('\n');
    verbs.forEach((name, verb) -> tell(page, "## ", name, verb.getCommandSpec()));
    GeneratedPage.hold(Path.of("docs/verbs.md"), page.toString().stripTrailing() + "\n");
  }

  @Test
  void everyVerbHasAnExample() {
    Cli.commandLine()
        .getSubcommands()
        .forEach(
            (name, verb) -> {
              if (verb.getSubcommands().isEmpty()) {
                assertThat(VerbExamples.block(name)).as("example of %s", name).isNotEmpty();
              }
              verb.getSubcommands()
                  .keySet()
                  .forEach(
                      part ->
                          assertThat(VerbExamples.block(name + " " + part))
                              .as("example of %s %s", name, part)
                              .isNotEmpty());
            });
  }

  private static void tell(StringBuilder page, String level, String name, CommandSpec verb) {
    page.append(level).append(name).append("\n\n");
    page.append(String.join(" ", verb.usageMessage().description())).append("\n\n");
    verb.usageMessage().autoWidth(false).width(100);
    String synopsis = new Help(verb, Help.defaultColorScheme(Help.Ansi.OFF)).synopsis(0);
    page.append("```text\n").append(synopsis.stripTrailing()).append("\n```\n\n");
    arguments(page, verb);
    footer(page, verb);
    page.append(VerbExamples.block(name));
    verb.subcommands()
        .forEach(
            (part, sub) ->
                tell(page, level.strip() + "# ", name + " " + part, sub.getCommandSpec()));
  }

  private static void arguments(StringBuilder page, CommandSpec verb) {
    List<OptionSpec> options =
        verb.options().stream()
            .filter(o -> !o.hidden() && !o.usageHelp() && !o.versionHelp())
            .sorted(java.util.Comparator.comparing(OptionSpec::longestName))
            .toList();
    if (options.isEmpty() && verb.positionalParameters().isEmpty()) {
      return;
    }
    page.append("| argument | means |\n| --- | --- |\n");
    for (PositionalParamSpec parameter : verb.positionalParameters()) {
      row(page, parameter.paramLabel(), parameter);
    }
    for (OptionSpec option : options) {
      boolean flag = option.arity().max() == 0;
      row(page, option.longestName() + (flag ? "" : " " + option.paramLabel()), option);
    }
    page.append('\n');
  }

  private static void row(StringBuilder page, String what, ArgSpec argument) {
    String means = cell(String.join(" ", argument.description()));
    page.append("| ")
        .append(code(what))
        .append(" | ")
        .append(means)
        .append(required(argument) ? " Required." : "")
        .append(" |\n");
  }

  /** In a group of which one is given at most, the parser calls each required. */
  private static boolean required(ArgSpec argument) {
    return argument.required() && argument.isOption() && argument.group() == null;
  }

  /** Lines that are set in stand in a block of their own; the others are one paragraph. */
  private static void footer(StringBuilder page, CommandSpec verb) {
    List<String> lines = List.of(verb.usageMessage().footer());
    List<String> block = lines.stream().filter(l -> l.startsWith("  ")).toList();
    if (!block.isEmpty()) {
      page.append("```text\n").append(String.join("\n", block).indent(-2)).append("```\n\n");
    }
    String text = String.join(" ", lines.stream().filter(l -> !l.startsWith("  ")).toList());
    if (!text.isBlank()) {
      page.append(text.strip()).append("\n\n");
    }
  }
}
