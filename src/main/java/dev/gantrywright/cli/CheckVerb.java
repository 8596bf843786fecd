package dev.gantrywright.cli;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.Early;
import dev.gantrywright.machine.ProfileLines;
import dev.gantrywright.report.FindingsJson;
import dev.gantrywright.report.FindingsJunit;
import dev.gantrywright.report.FindingsLayout;
import dev.gantrywright.report.FindingsSarif;
import dev.gantrywright.report.FindingsText;
import dev.gantrywright.rules.book.StandardBook;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what does not fit together in printer profiles. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = {
      "Says what does not fit together, worst first: each finding with id, level, place,"
          + " evidence, source and remedy.",
      "A directory stands for every *.printer.json below it."
    },
    footer = {
      "",
      "Exit status 1 where a finding is of level error, 2 where a profile is unreadable."
    })
final class CheckVerb implements Callable<Integer> {
  enum Format {
    text,
    json,
    sarif,
    junit
  }

  private static final String PROFILE_ENDING = ".printer.json";

  /** Lines longer than this are hard to read, however wide the terminal is. */
  private static final int WIDEST = 100;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "PROFILE",
      description = "Printer profiles, or directories of them.")
  private List<Path> profiles = new ArrayList<>();

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description = "The firmware folder to check against, instead of the one a profile names.")
  private Path folder;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How to print: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).",
      defaultValue = "text")
  private Format format = Format.text;

  @Option(
      names = "--page",
      paramLabel = "RULE",
      description = "Print the page of a rule, such as GW-M001, instead of checking.")
  private String page;

  @Override
  public Integer call() {
    if (page != null) {
      Printed.out(spec).print(RulePage.text(page, StandardBook.open().rules()));
      return ExitStatus.FINE;
    }
    if (profiles.isEmpty()) {
      throw new UsageProblem("no profile is given; see '" + spec.qualifiedName() + " --help'");
    }
    if (folder != null && !Files.isDirectory(folder)) {
      throw new UsageProblem(folder + ": there is no such directory; give the firmware folder");
    }
    Early<Checking> checking = Early.of("rule book", Checking::shipped);
    List<Path> files = files();
    ShortRun.tell(files.size());
    boolean pageHint = format == Format.text && Terminal.is(Terminal.OUT);
    CheckRun run =
        new CheckRun(
            layout(checking), Printed.out(spec), Printed.err(spec), files.size(), pageHint);
    return run.of(checking, files, folder);
  }

  private List<Path> files() {
    List<Path> files = new ArrayList<>();
    for (Path given : profiles) {
      if (Files.isDirectory(given)) {
        List<Path> below = below(given);
        if (below.isEmpty()) {
          throw new UsageProblem(given + ": holds no *" + PROFILE_ENDING);
        }
        files.addAll(below);
      } else {
        files.add(given);
      }
    }
    return files;
  }

  private static List<Path> below(Path directory) {
    try (Stream<Path> walk = Files.walk(directory)) {
      return walk.filter(file -> file.getFileName().toString().endsWith(PROFILE_ENDING))
          .sorted()
          .toList();
    } catch (IOException | UncheckedIOException e) {
      throw new UsageProblem(directory + ": cannot be read (" + e.getMessage() + ")", e);
    }
  }

  private FindingsLayout layout(Supplier<Checking> checking) {
    return switch (format) {
      case text -> new FindingsText(width(), Help.Ansi.AUTO.enabled());
      case json -> new FindingsJson();
      case sarif -> sarif(checking.get());
      case junit -> new FindingsJunit(checking.get().book().rules());
    };
  }

  /** Columns of the terminal, as far as they can be told; a file gets the widest. */
  private int width() {
    return Terminal.is(Terminal.OUT) ? Math.min(WIDEST, spec.usageMessage().width()) : WIDEST;
  }

  private static FindingsSarif sarif(Checking checking) {
    String version = new ProgramVersion().getVersion()[0].replace("gantrywright ", "");
    return new FindingsSarif(version, checking.book().rules(), file -> lines(file)::of);
  }

  private static ProfileLines lines(String file) {
    try {
      return ProfileLines.of(Files.readAllBytes(Path.of(file)));
    } catch (IOException gone) {
      return ProfileLines.of(new byte[0]);
    }
  }
}
