package dev.gantrywright.app;

import dev.gantrywright.build.ArtefactPattern;
import dev.gantrywright.build.BuildCommand;
import dev.gantrywright.build.BuildHistory;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.build.BuildRun;
import dev.gantrywright.build.Cleaning;
import dev.gantrywright.build.MemoryNeed;
import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageDetails;
import dev.gantrywright.image.ImageReader;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.machine.BuildSettings;
import dev.gantrywright.machine.BuiltImage;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.patch.Manifest;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Builds a printer's firmware in its patched folder, reads what the tools say, and judges the
 * image. Never in the firmware folder itself. {@link #run} blocks; {@link #cancel} may come from
 * any thread.
 */
public final class BuildJob {
  /**
   * What came of it.
   *
   * @param build how the command ended
   * @param diagnostics tied to settings and profile fields
   * @param image the image that it left, where it can be read
   * @param verdict what the judge says, where the controller is known
   * @param imageProblem one line, where the image cannot be read
   */
  public record Done(
      BuildResult build,
      List<TiedDiagnostic> diagnostics,
      Optional<Image> image,
      Optional<Verdict> verdict,
      Optional<String> imageProblem) {
    public Done {
      diagnostics = List.copyOf(diagnostics);
    }

    /** What the program takes, where the build or the image tells. */
    public Optional<MemoryNeed> need() {
      if (image.isPresent() && image.get().details() instanceof ImageDetails.Elf elf) {
        return Optional.of(new MemoryNeed(elf.use().flashBytes(), elf.use().ramBytes()));
      }
      Optional<MemoryNeed> told = MemoryNeed.of(build.sizes());
      return told.isPresent() ? told : image.map(i -> new MemoryNeed(i.contents().byteCount(), 0));
    }

    /** The same in the form that a profile keeps it; empty where no image was left. */
    public Optional<BuiltImage> measured() {
      Optional<Image> placed = verdict.map(v -> v.examination().image()).or(() -> image);
      return placed.map(
          i ->
              new BuiltImage(
                  i.contents().byteCount(),
                  need().map(MemoryNeed::ramBytes).filter(n -> n > 0).orElse(null),
                  i.placed() ? i.contents().span().start() : null,
                  null));
    }

    /** Whether there is an image that may be loaded. */
    public boolean good() {
      return build.outcome() == BuildResult.Outcome.BUILT
          && imageProblem.isEmpty()
          && verdict.filter(Verdict::refused).isEmpty();
    }
  }

  private final OpenPrinter printer;
  private final Path folder;
  private final Path records;
  private final Clock clock;
  private final BuildRun run;
  private final BuildCommand command;

  /**
   * @param folder the patched folder
   * @param records where histories are kept
   * @throws IllegalArgumentException with one line, where the profile's build section cannot serve
   */
  public BuildJob(
      OpenPrinter printer, Path folder, Path records, BuildListener listener, Clock clock) {
    this.printer = printer;
    this.folder = folder.toAbsolutePath().normalize();
    this.records = records;
    this.clock = clock;
    PrinterProfile profile = printer.profile();
    BuildSettings build = profile.build();
    if (build.command().isEmpty()) {
      throw new IllegalArgumentException(
          "the profile has no build command; enter it in build.command, one word an element");
    }
    if (printer.folder() != null
        && printer.folder().root().toAbsolutePath().normalize().equals(this.folder)) {
      throw new IllegalArgumentException(
          folder
              + " is the firmware folder itself, which is never written to; build in the patched"
              + " folder");
    }
    this.command =
        BuildCommand.of(
            build.command(), this.folder, build.environment(), profile.board().target());
    this.run = new BuildRun(command, ArtefactPattern.of(build.artefact()), listener, clock);
  }

  public BuildCommand command() {
    return command;
  }

  public BuildHistory history() {
    return history(records, printer.title());
  }

  /** The builds of the printer with that title. */
  public static BuildHistory history(Path records, String title) {
    return new BuildHistory(RecordPlace.of(records, title).resolve("builds.jsonl"));
  }

  public void cancel() {
    run.cancel();
  }

  /**
   * Builds, judges and notes it in the history.
   *
   * @throws IOException where the history cannot be written
   */
  public Done run() throws IOException {
    BuildResult result = run.run();
    Optional<Image> image = Optional.empty();
    Optional<String> problem = Optional.empty();
    if (result.artefact().isPresent()) {
      try {
        image = Optional.of(ImageReader.read(result.artefact().get()));
      } catch (BrokenImage | IOException e) {
        problem = Optional.of(result.artefact().get() + ": " + e.getMessage());
      }
    }
    Optional<Verdict> verdict =
        image.isPresent()
            ? BuiltImageJudge.judge(
                printer,
                image.get(),
                result.artefact().get(),
                PatchedFiles.of(printer, folder),
                records)
            : Optional.empty();
    history().add(entry(result, image));
    return new Done(result, tied(result), image, verdict, problem);
  }

  private List<TiedDiagnostic> tied(BuildResult result) {
    if (printer.folder() == null) {
      return result.diagnostics().stream().map(d -> new TiedDiagnostic(d, List.of())).toList();
    }
    DiagnosticTies ties = new DiagnosticTies(printer.folder(), printer.names());
    return result.diagnostics().stream().map(ties::of).toList();
  }

  private BuildHistory.Entry entry(BuildResult result, Optional<Image> image) {
    return new BuildHistory.Entry(
        result.started(),
        result.took(),
        result.outcome(),
        result.attempts(),
        command.shown(),
        result.errors(),
        result.warnings(),
        result.artefact().map(p -> folder.relativize(p).toString()).orElse(""),
        image.map(Image::sha256).orElse(""));
  }

  /**
   * What a clean step would delete: everything in the patched folder that the export did not put
   * there.
   */
  public Cleaning cleaning() throws IOException {
    return cleaning(printer, folder);
  }

  /**
   * The same without a build command.
   *
   * @param folder the patched folder
   */
  public static Cleaning cleaning(OpenPrinter printer, Path folder) throws IOException {
    List<Path> kept = new ArrayList<>();
    for (Path file : PatchedFiles.of(printer, folder)) {
      kept.add(folder.relativize(file));
    }
    kept.add(Path.of(Manifest.FILE));
    return Cleaning.plan(folder, kept);
  }
}
