package dev.gantrywright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The command line: parses, calls a verb, turns every problem into one line and an exit status. */
@Command(
    name = "gantrywright",
    mixinStandardHelpOptions = true,
    versionProvider = ProgramVersion.class,
    description =
        "Brings a 3D printer's controller board from bare hardware to proven firmware settings."
            + " Without a verb it opens the workbench.",
    footer = {
      "",
      "'gantrywright VERB --help' says more of each.",
      "",
      "Exit status: 0 fine, 1 findings of level error or a comparison that failed, 2 "
          + "bad usage or unreadable input, 3 device or I/O failure. Ctrl-C ends a run in "
          + "order: what it was writing is whole or gone, and the status is 130."
    })
public final class Cli implements Runnable {
  @Spec private CommandSpec spec;

  /**
   * Runs one command line.
   *
   * @return the exit status
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    CommandLine line = commandLine(verbs(args));
    line.setOut(out);
    line.setErr(err);
    int status = line.execute(args);
    out.flush();
    err.flush();
    return status;
  }

  /** The parser with every verb, also the source of the generated verb pages. */
  public static CommandLine commandLine() {
    return commandLine(Verbs.all());
  }

  /** The one verb that is called, or else all: what is not called need not be looked through. */
  private static List<Object> verbs(String... args) {
    List<Object> called =
        Verbs.all().stream().filter(verb -> args.length > 0 && name(verb).equals(args[0])).toList();
    return called.isEmpty() ? Verbs.all() : called;
  }

  private static String name(Object verb) {
    return verb.getClass().getAnnotation(Command.class).name();
  }

  private static CommandLine commandLine(List<Object> verbs) {
    CommandLine line = new CommandLine(new Cli());
    verbs.forEach(line::addSubcommand);
    line.setExecutionExceptionHandler((problem, at, parsed) -> report(problem, at));
    line.setParameterExceptionHandler((problem, args) -> report(problem));
    line.registerConverter(Path.class, new GivenPath());
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setUsageHelpAutoWidth(true);
    line.getHelpSectionMap().put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, Cli::overview);
    // Whatever is printed goes through ShownWriter, which lets no terminal code pass.
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    return line;
  }

  /** The verbs with the first sentence of each: the whole is said by VERB --help. */
  private static String overview(CommandLine.Help help) {
    int width = Math.min(Paragraph.WIDEST, help.commandSpec().usageMessage().width());
    StringBuilder lines = new StringBuilder();
    help.subcommands()
        .forEach(
            (name, verb) ->
                lines.append(
                    Paragraph.of(
                        String.format("  %-10s", name),
                        " ".repeat(12),
                        firstSentence(verb.commandSpec()),
                        width)));
    return lines.toString();
  }

  /** What a verb does, as lists of verbs say it. */
  public static String firstSentence(CommandSpec verb) {
    String text = String.join(" ", verb.usageMessage().description());
    return text.split("(?<=[.:]) ")[0].replaceFirst(":$", ".");
  }

  private static int report(ParameterException problem) {
    CommandLine at = problem.getCommandLine();
    String verb = at.getCommandSpec().qualifiedName();
    String told = oneLine(CallProblem.text(problem));
    at.getErr().println(told + (told.endsWith("?") ? " See '" : "; see '") + verb + " --help'");
    return ExitStatus.USAGE;
  }

  private static int report(Exception problem, CommandLine at) {
    at.getOut().flush();
    if (problem instanceof CtrlC.Said) {
      return ExitStatus.DEVICE;
    }
    if (problem instanceof UsageProblem) {
      at.getErr().println(oneLine(problem.getMessage()));
      return ExitStatus.USAGE;
    }
    if (problem instanceof DeviceProblem) {
      at.getErr().println(oneLine(problem.getMessage()));
      return ExitStatus.DEVICE;
    }
    at.getErr()
        .println(
            "this is a fault in the program, not in your input: "
                + oneLine(String.valueOf(problem))
                + "; please report it with the command that you gave");
    return ExitStatus.DEVICE;
  }

  private static String oneLine(String text) {
    return text == null ? "no reason given" : text.strip().replaceAll("\\s*\\R\\s*", " ");
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
