package dev.gantrywright.cli;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.MeasuredImage;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.RecordPlace;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.build.Cleaning;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportException;
import dev.gantrywright.patch.ExportProgress;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb build: writes the patched folder, builds in it, lists diagnostics, judges the image. */
@Command(
    name = "build",
    mixinStandardHelpOptions = true,
    description =
        "Writes the printer's patched folder, runs its build command there, follows it, lists what"
            + " the tools say beside the settings that it is about, and judges the image.",
    footer = {
      "",
      "Exit status 0: built, and nothing against the image; 1: the build failed or the image is"
          + " wrong; 2: bad usage; 3: the command could not be started."
    })
final class BuildVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;
  @Mixin private HistoryOption history;

  @Parameters(index = "0", paramLabel = "PROFILE", description = "The printer profile.")
  private Path profile;

  @Option(
      names = "--in",
      paramLabel = "DIR",
      description = "Build in this patched folder as it is, instead of writing one.")
  private Path in;

  @Option(
      names = "--names",
      paramLabel = "NAMES",
      description = "The firmware folder's name map; without it the one that the profile names.")
  private Path names;

  @Option(
      names = "--keep",
      description =
          "Write what the image takes into the profile (build.image), so that check speaks of it.")
  private boolean keep;

  @Option(names = "--clean", description = "Say what a clean step would delete; build nothing.")
  private boolean clean;

  @Option(names = "--delete", description = "With --clean: delete it.")
  private boolean delete;

  @Option(
      names = "--records",
      paramLabel = "DIR",
      description = "Where histories and the patched folder are kept.")
  private Path records = RecordPlace.ofThisUser();

  @Override
  public Integer call() {
    if (delete && !clean) {
      throw new UsageProblem("--delete goes with --clean");
    }
    if (in != null && names != null) {
      throw new UsageProblem(
          "--names does not go with --in: what is in that folder is built as it is");
    }
    OpenPrinter printer = open();
    Path folder = in != null ? in : RecordPlace.of(records, printer.title()).resolve("patched");
    if (in != null && !Files.isDirectory(in)) {
      throw new UsageProblem(in + ": no such folder; write it with 'gantrywright patch … --out'");
    }
    BuildPrinter out = new BuildPrinter(spec, format.json());
    try {
      BuildJob job = new BuildJob(printer, folder, records, out, Clock.systemUTC());
      if (clean) {
        return clean(job, folder);
      }
      if (in == null) {
        export(printer, folder);
      }
      return build(job, out, folder, printer);
    } catch (IllegalArgumentException e) {
      throw new UsageProblem(profile + ": " + e.getMessage(), e);
    } catch (IOException e) {
      throw new DeviceProblem(folder + ": cannot be written (" + IoReason.of(e) + ")", e);
    }
  }

  private OpenPrinter open() {
    try {
      OpenPrinter printer = new Opening().open(profile);
      if (printer.folder() == null) {
        throw new UsageProblem(
            printer.unreadFolder() == null
                ? profile + ": names no firmware folder; enter it in build.folder"
                : printer.unreadFolder().why());
      }
      return printer;
    } catch (ProfileProblem e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }

  private void export(OpenPrinter printer, Path folder) {
    PatchPlan plan =
        PatchPlan.of(
            printer.profile(),
            NameMapInput.read(names, profile, printer.profile(), printer.folder()),
            printer.folder());
    try {
      Files.createDirectories(folder.toAbsolutePath().getParent());
      Manifest manifest = written(plan, folder);
      history.keep(spec, profile, past -> past.exported(printer, plan, manifest, folder));
    } catch (ExportException e) {
      throw new DeviceProblem(e.getMessage(), e);
    } catch (IOException e) {
      throw new DeviceProblem(folder + ": cannot be written (" + IoReason.of(e) + ")", e);
    }
    if (!format.json()) {
      plan.refusals().forEach(r -> Printed.err(spec).println("not written: " + r));
      Printed.out(spec)
          .println(
              "patched folder: "
                  + folder
                  + ", "
                  + Counted.of(plan.lines().size(), "line")
                  + " changed");
    }
  }

  private Manifest written(PatchPlan plan, Path folder) throws ExportException {
    try (CtrlC stop = new CtrlC()) {
      try {
        return Export.write(plan, folder, true, ExportProgress.none(), stop::pressed);
      } catch (ExportException cut) {
        stop.tell(Printed.err(spec), cut);
        throw cut;
      }
    }
  }

  private Integer build(BuildJob job, BuildPrinter out, Path folder, OpenPrinter printer)
      throws IOException {
    job.history().usual().ifPresent(out::usual);
    try (CtrlC stop = new CtrlC(job::cancel)) {
      BuildJob.Done done = job.run();
      if (stop.pressed()) {
        Printed.err(spec).println("build cancelled; nothing that it started is left running");
        return ExitStatus.FINDINGS;
      }
      return done(job, out, folder, printer, done);
    }
  }

  private Integer done(
      BuildJob job, BuildPrinter out, Path folder, OpenPrinter printer, BuildJob.Done done)
      throws IOException {
    if (done.build().outcome() == BuildResult.Outcome.NOT_STARTED) {
      throw new DeviceProblem(done.build().problem().orElse("the build did not start"));
    }
    if (keep && done.measured().isPresent()) {
      ProfileStore.save(MeasuredImage.into(printer.profile(), done.measured().get()), profile);
    }
    history.keep(spec, profile, past -> past.built(printer.profile(), done, job.command().shown()));
    out.done(job, folder, done);
    return done.good() ? ExitStatus.FINE : ExitStatus.FINDINGS;
  }

  private Integer clean(BuildJob job, Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      throw new UsageProblem(folder + ": there is no patched folder yet, so nothing to clean");
    }
    Cleaning plan = job.cleaning();
    Optional<Integer> deleted = delete ? Optional.of(plan.run()) : Optional.empty();
    if (format.json()) {
      Printed.json(
          spec,
          Map.of(
              "folder", folder.toString(),
              "files", plan.files().stream().map(Path::toString).toList(),
              "bytes", plan.bytes(),
              "deleted", deleted.orElse(0)));
    } else {
      Printed.out(spec).println(plan.shown());
      plan.files().forEach(f -> Printed.out(spec).println("  " + f));
      Printed.out(spec)
          .println(
              deleted
                  .map(n -> Counted.of(n, "file") + " deleted")
                  .orElse("nothing deleted; --delete does it"));
    }
    return ExitStatus.FINE;
  }
}
