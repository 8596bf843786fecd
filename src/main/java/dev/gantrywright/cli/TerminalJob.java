package dev.gantrywright.cli;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.app.MainJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.patch.ExportException;
import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedies;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;

/** The main job where there is no display: the six stages told as text. */
public final class TerminalJob {
  private final PrintWriter out;
  private final PrintWriter err;

  public TerminalJob(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  /**
   * Unpacks the demo into a fresh folder and runs the job on its first printer.
   *
   * @return the exit status
   */
  public int run() {
    String history = System.getenv().getOrDefault("GANTRYWRIGHT_HISTORY", "on");
    if (!Set.of("on", "off").contains(history)) {
      return fail(
          "GANTRYWRIGHT_HISTORY: '" + history + "' is not known; known are on, off",
          ExitStatus.USAGE);
    }
    try {
      Path folder = Files.createTempDirectory("gantrywright-");
      Path profile = DemoWorkshop.unpack(folder.resolve("harbour-street-workshop"));
      MainJob.Story story = new MainJob(Catalog.shipped()).run(profile, folder.resolve("patched"));
      tell(story, folder);
      keep(story, profile, folder.resolve("patched"), history.equals("on"));
      return ExitStatus.FINE;
    } catch (ProfileProblem e) {
      return fail(e.getMessage(), ExitStatus.USAGE);
    } catch (LinkException | ExportException e) {
      return fail(e.getMessage(), ExitStatus.DEVICE);
    } catch (IOException e) {
      return fail("the demo cannot be unpacked: " + e.getMessage(), ExitStatus.DEVICE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return fail("interrupted", ExitStatus.DEVICE);
    } finally {
      out.flush();
    }
  }

  /**
   * Saves the profile as the remedies left it and keeps in its history what was done, as the stages
   * themselves do; {@code GANTRYWRIGHT_HISTORY=off} leaves the history out.
   */
  private void keep(MainJob.Story story, Path profile, Path patched, boolean history)
      throws IOException {
    ProfileStore.save(story.remedied(), profile);
    out.println();
    out.println("Record    profile with the remedies: " + profile);
    if (!history) {
      return;
    }
    PrinterHistory past = PrinterHistory.beside(profile);
    OpenPrinter exported = story.printer().with(story.remedied(), story.printer().names());
    try {
      past.proved(story.printer().profile(), story.before(), Set.of());
      past.exported(exported, story.plan(), story.manifest(), patched);
      past.proved(story.remedied(), story.after(), Set.of());
      out.println("          told by: gantrywright history " + profile);
    } catch (IOException failed) {
      err.println("not kept in the history: " + failed.getMessage());
      err.flush();
    }
  }

  private int fail(String line, int status) {
    err.println(line);
    err.flush();
    return status;
  }

  private void tell(MainJob.Story story, Path folder) {
    describe(story.printer());
    check(story);
    write(story, folder);
    out.println();
    out.println("Build     your own build command runs in the patched folder: see 'build --help'");
    out.println("Load      a verified copy of the image to card or drive: see 'load --help'");
    out.println();
    prove("Prove     practice board, firmware as the profile was: ", story.before());
    prove("          practice board, firmware as patched:         ", story.after());
  }

  private void describe(OpenPrinter printer) {
    out.println();
    out.println(
        "Describe  "
            + printer.title()
            + " · "
            + (printer.sheet() == null ? "no board sheet" : printer.sheet().name())
            + " ("
            + printer.profile().board().mcu()
            + ") · "
            + printer.folder().root().getFileName());
  }

  private void check(MainJob.Story story) {
    out.println();
    out.println("Check     " + count(story.findings()));
    for (Finding finding : story.findings()) {
      if (finding.level() != Level.NOTE) {
        out.println(
            "  " + finding.level().word() + "  " + finding.where() + ": " + finding.evidence());
      }
    }
    for (Remedies.Applied applied : story.applied()) {
      out.println("  remedy  " + applied.finding().where() + ": " + applied.remedy().title());
    }
    out.println("          after the remedies: " + count(story.left()));
  }

  private static String count(List<Finding> findings) {
    return of(findings, Level.ERROR, "error")
        + ", "
        + of(findings, Level.WARNING, "warning")
        + ", "
        + of(findings, Level.NOTE, "note");
  }

  private static String of(List<Finding> findings, Level level, String word) {
    return Counted.of(findings.stream().filter(finding -> finding.level() == level).count(), word);
  }

  private void write(MainJob.Story story, Path folder) {
    out.println();
    out.println(
        "Write     "
            + Counted.of(story.plan().lines().size(), "value")
            + " in "
            + Counted.of(story.plan().after().size(), "file")
            + ", patched folder "
            + folder.resolve("patched"));
    out.println();
    new String(story.plan().diff(), StandardCharsets.ISO_8859_1)
        .lines()
        .filter(line -> line.startsWith("-") || line.startsWith("+"))
        .forEach(line -> out.println("  " + line));
    story.plan().refusals().forEach(refusal -> out.println("  " + refusal));
  }

  private void prove(String what, ProofReport report) {
    out.println(
        what
            + (report.passed()
                ? ProofText.agree(report.count(Check.Verdict.PASS))
                : ProofText.differ(report)));
    for (Check check : report.checks()) {
      if (check.verdict() == Check.Verdict.FAIL) {
        out.println("            " + check.path() + ": " + ProofText.compared(check));
      }
    }
  }
}
