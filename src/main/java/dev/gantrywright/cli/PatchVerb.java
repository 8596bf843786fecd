package dev.gantrywright.cli;

import dev.gantrywright.app.Opening;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.names.CarryOver;
import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportException;
import dev.gantrywright.patch.ExportProgress;
import dev.gantrywright.patch.HandChange;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans what a profile, or single changes, would write into a firmware folder. */
@Command(
    name = "patch",
    mixinStandardHelpOptions = true,
    description = {
      "Prints as a unified diff what would change in a firmware folder; 'git apply' and"
          + " 'patch -p1' take it. The folder itself is never written to.",
      "With --out it writes the patched folder: a whole copy with the planned lines rewritten,"
          + " and "
          + Manifest.FILE
          + " saying why each line changed."
    },
    footer = {
      "",
      "What is not written is said on standard error. Exit status 1 where a change "
          + "that was asked for by name (--set, --on, --off, --insert) is refused."
    })
final class PatchVerb implements Callable<Integer> {
  private static final long MOST_DIFF_BYTES = 64L << 20;

  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;
  @Mixin private HistoryOption history;

  @Parameters(index = "0", paramLabel = "DIR", description = "The firmware folder.")
  private Path folder;

  @Option(
      names = "--profile",
      paramLabel = "PROFILE",
      description = "Write this printer profile's values.")
  private Path profile;

  @Option(
      names = "--names",
      paramLabel = "NAMES",
      description =
          "The folder's name map; without it the one that the profile names, else what the folder"
              + " teaches.")
  private Path names;

  @Option(
      names = "--from",
      paramLabel = "OLDDIR",
      description =
          "The earlier release that the name map belongs to: says what became of each setting and"
              + " carries the map over.")
  private Path from;

  @Option(
      names = "--set",
      paramLabel = "NAME=VALUE",
      description =
          "Give a macro, an element (NAME[2]=VALUE) or a build setting ([section] key=VALUE) a value.")
  private List<String> set = new ArrayList<>();

  @Option(names = "--on", paramLabel = "NAME", description = "Switch a definition on.")
  private List<String> on = new ArrayList<>();

  @Option(names = "--off", paramLabel = "NAME", description = "Comment a definition out.")
  private List<String> off = new ArrayList<>();

  @Option(
      names = "--insert",
      paramLabel = "NAME=LINE",
      description = "Add a line behind the definition of a macro.")
  private List<String> insert = new ArrayList<>();

  @Option(
      names = "--diff",
      paramLabel = "FILE",
      description = "Make the changes of a unified diff, such as one that this verb printed.")
  private Path diff;

  @Option(
      names = "--back",
      description = "With --diff: take its changes out of a folder that has them.")
  private boolean back;

  @Option(
      names = "--define",
      paramLabel = "NAME[=VALUE]",
      description = "A name that the build defines for the compiler.")
  private List<String> defines = new ArrayList<>();

  @Option(names = "--out", paramLabel = "OUTDIR", description = "Write the patched folder here.")
  private Path out;

  @Option(names = "--replace", description = "OUTDIR may be a folder that is not empty.")
  private boolean replace;

  @Override
  public Integer call() {
    List<HandChange> byHand = byHand();
    if (profile == null && byHand.isEmpty() && diff == null) {
      throw new UsageProblem(
          "say what to change: --profile, --set, --on, --off, --insert or --diff");
    }
    if (diff != null && (profile != null || !byHand.isEmpty())) {
      throw new UsageProblem(
          "--diff stands alone: write its patched folder first, then change that");
    }
    if (back && diff == null) {
      throw new UsageProblem("--back goes with --diff FILE");
    }
    if (replace && out == null) {
      throw new UsageProblem("--replace goes with --out OUTDIR");
    }
    if (profile == null && (names != null || from != null)) {
      throw new UsageProblem(
          (names != null ? "--names" : "--from") + " goes with --profile PROFILE");
    }
    FirmwareFolder read = FolderInput.read(spec, folder, defines);
    PatchPlan plan = diff == null ? plan(byHand, read) : ofDiff(read);
    if (!format.json()) {
      BytePrinter.print(Printed.out(spec), plan.diff());
    }
    Manifest manifest = out == null ? null : export(plan);
    report(plan, manifest);
    boolean refusedByName = plan.refusals().stream().anyMatch(refusal -> refusal.path().isEmpty());
    return refusedByName ? ExitStatus.FINDINGS : ExitStatus.FINE;
  }

  private CarryOver carried;

  private PatchPlan plan(List<HandChange> byHand, FirmwareFolder read) {
    if (profile == null) {
      return PatchPlan.of(byHand, read);
    }
    try {
      PrinterProfile printer = ProfileStore.read(profile);
      if (from == null) {
        return PatchPlan.of(
            printer, NameMapInput.read(names, profile, printer, read), byHand, read);
      }
      FirmwareFolder old = FolderInput.read(spec, from, defines);
      carried = CarryOver.of(old, NameMapInput.read(names, profile, printer, old), read);
      return PatchPlan.of(printer, carried.map(), byHand, read);
    } catch (ProfileProblem unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    }
  }

  private PatchPlan ofDiff(FirmwareFolder read) {
    String cause = (back ? "--back " : "") + "--diff " + diff.getFileName();
    try {
      if (Files.size(diff) > MOST_DIFF_BYTES) {
        throw new UsageProblem(diff + " is larger than 64 MiB: is it a diff?");
      }
      return PatchPlan.ofDiff(Files.readAllBytes(diff), cause, back, read);
    } catch (IllegalArgumentException unfit) {
      throw new UsageProblem(diff + ": " + unfit.getMessage(), unfit);
    } catch (IOException unreadable) {
      throw new UsageProblem(diff + ": " + IoReason.of(unreadable), unreadable);
    }
  }

  private List<HandChange> byHand() {
    List<HandChange> changes = new ArrayList<>();
    try {
      set.forEach(text -> changes.add(HandChange.set(text)));
    } catch (IllegalArgumentException wrong) {
      throw new UsageProblem("--set: " + wrong.getMessage(), wrong);
    }
    try {
      insert.forEach(text -> changes.add(HandChange.insert(text)));
    } catch (IllegalArgumentException wrong) {
      throw new UsageProblem("--insert: " + wrong.getMessage(), wrong);
    }
    on.forEach(name -> changes.add(new HandChange.On(name)));
    off.forEach(name -> changes.add(new HandChange.Off(name)));
    return changes;
  }

  private Manifest export(PatchPlan plan) {
    try {
      Manifest manifest = written(plan);
      history.keep(
          spec, profile, past -> past.exported(new Opening().open(profile), plan, manifest, out));
      return manifest;
    } catch (ExportException failed) {
      if (failed.kind() == ExportException.Kind.REFUSED) {
        throw new UsageProblem(failed.getMessage(), failed);
      }
      throw new DeviceProblem(failed.getMessage(), failed);
    }
  }

  private Manifest written(PatchPlan plan) throws ExportException {
    try (CtrlC stop = new CtrlC()) {
      try {
        return Export.write(plan, out, replace, ExportProgress.none(), stop::pressed);
      } catch (ExportException cut) {
        stop.tell(Printed.err(spec), cut);
        throw cut;
      }
    }
  }

  private void report(PatchPlan plan, Manifest manifest) {
    PrintWriter err = Printed.err(spec);
    if (format.json()) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("diff", BytePrinter.text(plan.diff()));
      document.put("lines", plan.lines());
      document.put("refusals", plan.refusals());
      document.put("unchanged", plan.unchanged());
      document.put("carryOver", carried == null ? null : carried.lines());
      document.put("out", out == null ? null : out.toString());
      document.put("manifest", manifest);
      Printed.json(spec, document);
      return;
    }
    if (carried != null) {
      carried.lines().stream()
          .filter(line -> line.fate() != CarryOver.Fate.KEPT || !line.changes().isEmpty())
          .forEach(err::println);
      long kept =
          carried.lines().stream()
              .filter(line -> line.fate() == CarryOver.Fate.KEPT && line.changes().isEmpty())
              .count();
      err.println("kept unchanged: " + kept);
    }
    plan.lines().stream()
        .filter(line -> !line.note().isEmpty())
        .forEach(line -> err.println(line.file() + ":" + line.line() + ": " + line.note()));
    if (plan.lines().isEmpty() && plan.refusals().isEmpty()) {
      err.println("nothing to change: the folder says so already");
    }
    plan.refusals().forEach(refusal -> err.println(refusal));
    plan.edits().before().problems().forEach(err::println);
    if (manifest != null) {
      manifest.leftOut().forEach(left -> err.println("left out: " + left));
      err.println("patched folder: " + out);
    }
  }
}
