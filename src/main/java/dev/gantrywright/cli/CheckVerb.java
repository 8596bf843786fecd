package dev.gantrywright.cli;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.Early;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.machine.ProfileLines;
import dev.gantrywright.report.FindingsJson;
import dev.gantrywright.report.FindingsJunit;
import dev.gantrywright.report.FindingsLayout;
import dev.gantrywright.report.FindingsSarif;
import dev.gantrywright.report.FindingsText;
import dev.gantrywright.rules.Rule;
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
      "A folder stands for every *.printer.json below it."
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

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "PROFILE",
      description = "Printer profiles, or folders of them.")
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
      return page();
    }
    if (profiles.isEmpty()) {
      throw new UsageProblem("no profile is given; see '" + spec.qualifiedName() + " --help'");
    }
    FolderInput.need(folder, "the firmware folder");
    Early<Checking> checking = Early.of("rule book", Checking::shipped);
    List<Path> files = files();
    ShortRun.tell(files.size());
    boolean pageHint = format == Format.text && Terminal.is(Terminal.OUT);
    CheckRun run =
        new CheckRun(
            layout(checking), Printed.out(spec), Printed.err(spec), files.size(), pageHint);
    return run.of(checking, files, folder);
  }

  private Integer page() {
    if (!profiles.isEmpty()) {
      throw new UsageProblem("--page prints the page of a rule; leave the profiles out");
    }
    Rule rule = RulePage.rule(page, StandardBook.open().rules());
    switch (format) {
      case text -> Printed.out(spec).print(RulePage.text(rule, Paragraph.width(spec)));
      case json -> Printed.json(spec, RulePage.document(rule));
      case sarif, junit ->
          throw new UsageProblem(
              "--page prints text or json; --format " + format + " lists findings");
    }
    return ExitStatus.FINE;
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
      IOException why = e instanceof UncheckedIOException lazy ? lazy.getCause() : (IOException) e;
      throw new UsageProblem(directory + ": cannot be read (" + IoReason.of(why) + ")", e);
    }
  }

  private FindingsLayout layout(Supplier<Checking> checking) {
    return switch (format) {
      case text -> new FindingsText(Paragraph.width(spec), Paragraph.colour());
      case json -> new FindingsJson();
      case sarif -> sarif(checking.get());
      case junit -> new FindingsJunit(checking.get().book().rules());
    };
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
