package dev.gantrywright.app;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportException;
import dev.gantrywright.patch.ExportProgress;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.prove.Proof;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.rules.CheckInput;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedies;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The whole job on one printer, without a window: check, take the first remedy of each finding,
 * plan, export the patched folder, prove against the practice board before and after.
 */
public final class MainJob {
  private static final Duration PATIENCE = Duration.ofSeconds(12);

  /** Far more than one printer needs; stops remedies that undo each other. */
  private static final int MOST_REMEDIES = 50;

  private final Catalog catalog;
  private final RuleBook book;

  public MainJob(Catalog catalog) {
    this.catalog = catalog;
    this.book = StandardBook.open();
  }

  /**
   * What came of it.
   *
   * @param printer as it was opened
   * @param remedied the profile with the remedies taken; not saved
   * @param findings before any remedy, worst first
   * @param applied the remedies taken
   * @param left findings after them
   * @param plan what is written
   * @param manifest of the patched folder
   * @param before the proof with the profile as it was
   * @param after the proof with the remedies taken
   */
  public record Story(
      OpenPrinter printer,
      PrinterProfile remedied,
      List<Finding> findings,
      List<Remedies.Applied> applied,
      List<Finding> left,
      PatchPlan plan,
      Manifest manifest,
      ProofReport before,
      ProofReport after) {}

  /**
   * Runs the job.
   *
   * @param patched where the patched folder goes; must not exist or be empty
   * @throws ProfileProblem where a profile cannot be read
   * @throws ExportException where the patched folder cannot be written
   * @throws LinkException where the practice board does not answer
   */
  public Story run(Path profile, Path patched)
      throws ProfileProblem, ExportException, LinkException, InterruptedException {
    OpenPrinter printer = new Opening().open(profile);
    if (printer.folder() == null || printer.names() == null) {
      throw new ProfileProblem(
          profile.toString(),
          0,
          0,
          "build.folder",
          printer.problems().isEmpty()
              ? "names no firmware folder with a name map; the main job needs both"
              : printer.problems().get(0));
    }
    CheckInput input =
        new CheckInput(
            printer.profile(), printer.sheet(), printer.folder(), printer.names(), catalog);
    List<Finding> findings = book.check(input);
    List<Remedies.Applied> applied = new ArrayList<>();
    CheckInput settled = settle(input, applied);
    PrinterProfile remedied = settled.profile();
    PatchPlan plan = PatchPlan.of(remedied, settled.names(), printer.folder());
    PatchPlan mistaken = PatchPlan.of(printer.profile(), printer.names(), printer.folder());
    Manifest manifest = Export.write(plan, patched, false, ExportProgress.none(), () -> false);
    return new Story(
        printer,
        remedied,
        findings,
        applied,
        book.check(settled),
        plan,
        manifest,
        prove(printer.profile(), mistaken, printer.names()),
        prove(remedied, plan, printer.names()));
  }

  /** Takes the first remedy that can be applied for each error and warning, until none is left. */
  private CheckInput settle(CheckInput input, List<Remedies.Applied> applied)
      throws ProfileProblem {
    CheckInput now = input;
    for (int round = 0; round < MOST_REMEDIES; round++) {
      Optional<Remedies.Applied> next = next(now);
      if (next.isEmpty()) {
        break;
      }
      now = Remedies.apply(now, next.get().remedy());
      applied.add(next.get());
    }
    return now;
  }

  private Optional<Remedies.Applied> next(CheckInput input) {
    return book.check(input).stream()
        .filter(finding -> finding.level() != Level.NOTE)
        .flatMap(
            finding ->
                finding.remedies().stream()
                    .filter(Remedy::applicable)
                    .limit(1)
                    .map(remedy -> new Remedies.Applied(finding, remedy)))
        .findFirst();
  }

  /** The practice machine is wired as the profile says and runs what the plan would build. */
  private static ProofReport prove(PrinterProfile profile, PatchPlan plan, NameMap names)
      throws LinkException, InterruptedException {
    Map<String, String> built = new LinkedHashMap<>();
    FolderValues.of(plan.patched(), names)
        .forEach((path, value) -> built.put(path, value.asString()));
    try (LineSession session =
        Connecting.open(
            profile,
            PortAddress.parse("practice:"),
            Connecting.settings(profile.serial()),
            PracticeMachine.of(profile, built))) {
      session.awaitUp(PATIENCE);
      return Proof.of(profile, session, Set.of(), Map.of());
    }
  }
}
