package dev.gantrywright.cli;

import dev.gantrywright.app.LoadJob;
import dev.gantrywright.app.RecordPlace;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.image.Circumstances;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.load.Card;
import dev.gantrywright.load.Drive;
import dev.gantrywright.load.Drives;
import dev.gantrywright.load.FolderCard;
import dev.gantrywright.load.LoadOutcome;
import dev.gantrywright.load.LoadProblem;
import dev.gantrywright.load.Uf2Drive;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb load: a verified copy to a card or drive, or a flashing command of the user's own. */
@Command(
    name = "load",
    mixinStandardHelpOptions = true,
    description =
        "Puts an image on a card or drive: judged, copied, pushed out, read back and compared, and"
            + " only then given its name. Says what the board's loader does next.",
    footer = {
      "",
      "  load --drives                         lists cards and drives",
      "  load FILE --to DIR [--as NAME]        copies",
      "  load --returned --to DIR --board S    reads the card that comes back",
      "  load --kept --board S                 lists images to go back to",
      "  load FILE --by -- COMMAND … {file} …  runs your own flashing command",
      "  load FILE --by --for PROFILE          runs the one in build.flash of the profile",
      "",
      "Exit status 0: proven; 1: refused, or the card shows that nothing was loaded; 2: bad usage or"
          + " no image; 3: the card failed."
    })
final class LoadVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ImageOptions options;
  @Mixin private TextOrJson format;
  @Mixin private HistoryOption history;

  @Parameters(index = "0", arity = "0..1", paramLabel = "FILE", description = "The image.")
  private Path file;

  @Parameters(
      index = "1..*",
      paramLabel = "COMMAND",
      description = "With --by: the flashing command, word by word; {file} stands for the image.")
  private List<String> command = new ArrayList<>();

  @Option(names = "--to", paramLabel = "DIR", description = "Where the card or drive is mounted.")
  private Path to;

  @Option(names = "--as", paramLabel = "NAME", description = "Name on the card.")
  private String as;

  @Option(names = "--drives", description = "List cards and drives that can be taken out.")
  private boolean drives;

  @Option(names = "--returned", description = "Read the card that was in the machine.")
  private boolean returned;

  @Option(
      names = "--kept",
      description = "List the images that were replaced on this board's cards.")
  private boolean kept;

  @Option(names = "--by", description = "Load by a command of your own.")
  private boolean by;

  @Option(
      names = "--for",
      paramLabel = "PROFILE",
      description =
          "The printer that it is loaded for: gives the board sheet and, with --by, build.flash;"
              + " the load goes into that printer's history.")
  private Path profile;

  @Option(
      names = "--because",
      paramLabel = "REASON",
      description = "Why to load although something speaks against it; kept in the history.")
  private String because;

  @Option(
      names = "--confirm",
      paramLabel = "SENTENCE",
      description = "The sentence that a command which erases the whole chip asks for.")
  private String confirm;

  @Option(
      names = "--records",
      paramLabel = "DIR",
      description = "Where histories and replaced images are kept.")
  private Path records = RecordPlace.ofThisUser();

  @Override
  public Integer call() {
    try {
      oneThing();
      if (drives) {
        return listDrives();
      }
      fromProfile();
      Optional<BoardSheet> sheet = options.sheet();
      LoadPrinter printer = new LoadPrinter(spec, format.json());
      LoadJob job = new LoadJob(sheet, records, Clock.systemUTC(), printer::step);
      if (kept) {
        printer.kept(job.kept().all());
        return ExitStatus.FINE;
      }
      if (returned) {
        return readReturned(job, printer);
      }
      if (file == null) {
        throw new UsageProblem("load: give the image file; see 'gantrywright load --help'");
      }
      byte[] bytes = ImageFile.bytes(file);
      Image image = ImageFile.read(file, bytes);
      Circumstances around =
          job.history().last().isEmpty()
              ? Circumstances.unknown()
              : Circumstances.unknown().lastLoaded(job.history().last().get().sha256());
      Optional<Verdict> verdict = options.judge(image, around);
      if (by) {
        return new CommandLoad(spec, format.json())
            .run(job, request(job, null, verdict, bytes), command, confirm, sheet, this::kept);
      }
      return copy(job, printer, verdict, bytes);
    } catch (IOException e) {
      throw new DeviceProblem("the card failed: " + IoReason.of(e), e);
    }
  }

  /** Refuses what would be passed over in silence. */
  private void oneThing() {
    long lists = Stream.of(drives, kept, returned, by).filter(given -> given).count();
    if (lists > 1) {
      throw new UsageProblem("load: give one of --drives, --kept, --returned and --by");
    }
    if (file != null && (drives || kept || returned)) {
      throw new UsageProblem("load: " + file + " is not loaded by a call that only looks");
    }
    if (!command.isEmpty() && !by) {
      throw new UsageProblem("load: a command of your own needs --by before it");
    }
    if (by && to != null) {
      throw new UsageProblem("load: --to does not go with --by: the command says where");
    }
  }

  /** What the profile says, where the command line does not. */
  private void fromProfile() {
    if (profile == null) {
      return;
    }
    try {
      PrinterProfile told = ProfileStore.read(profile);
      if (options.board == null && told.board().sheet() != null) {
        options.board = profile.resolveSibling(told.board().sheet());
      }
      if (by && command.isEmpty()) {
        command = told.build().flash();
        if (command.isEmpty()) {
          throw new UsageProblem(
              profile
                  + ": keeps no flashing command; enter it in build.flash, or give it after --by --");
        }
      }
    } catch (ProfileProblem e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }

  private Integer copy(LoadJob job, LoadPrinter printer, Optional<Verdict> verdict, byte[] bytes)
      throws IOException {
    Card card = new FolderCard(folder());
    LoadJob.Request request = request(job, card, verdict, bytes);
    try {
      if (Uf2Drive.on(card).isPresent()) {
        return printer.uf2(job, request, Uf2Drive.on(card).get(), to, this::taken);
      }
      printer.cautions();
      return copied(job, printer, request);
    } catch (LoadJob.Refused e) {
      printer.refused(request, e.getMessage());
      return ExitStatus.FINDINGS;
    } catch (LoadProblem e) {
      throw e.kind() == LoadProblem.Kind.NAME
          ? new UsageProblem(e.getMessage(), e)
          : new DeviceProblem(e.getMessage(), e);
    }
  }

  private Integer copied(LoadJob job, LoadPrinter printer, LoadJob.Request request)
      throws LoadJob.Refused, LoadProblem, IOException {
    try (CtrlC stop = new CtrlC()) {
      try {
        LoadJob.Done done = job.run(request, stop::pressed);
        history.keep(spec, profile, past -> past.loaded(ProfileStore.read(profile), request, done));
        printer.done(request, done);
        return ExitStatus.FINE;
      } catch (LoadProblem cut) {
        stop.tell(Printed.err(spec), cut);
        throw cut;
      }
    }
  }

  private void kept(LoadJob.Request request, String sha256, String command) {
    history.keep(
        spec, profile, past -> past.loadedBy(ProfileStore.read(profile), request, sha256, command));
  }

  private void taken(LoadJob.Request request, String drive) {
    history.keep(
        spec,
        profile,
        past ->
            past.taken(ProfileStore.read(profile), request, ImageFile.read(file).sha256(), drive));
  }

  private LoadJob.Request request(LoadJob job, Card card, Optional<Verdict> verdict, byte[] bytes)
      throws IOException {
    String name = as != null ? as : job.looksFor().orElse(file.getFileName().toString());
    Optional<Drive> drive = card == null ? Optional.empty() : drive();
    return new LoadJob.Request(
        file,
        bytes,
        name,
        card,
        drive,
        verdict,
        Optional.ofNullable(because).filter(r -> !r.isBlank()));
  }

  private Integer readReturned(LoadJob job, LoadPrinter printer) throws IOException {
    LoadOutcome outcome =
        job.returned(new FolderCard(folder()))
            .orElseThrow(
                () ->
                    new UsageProblem(
                        "no copy to a card is in the history of this board; give the same --board"
                            + " as when you copied"));
    printer.outcome(outcome);
    return outcome.state() == LoadOutcome.State.LOADED ? ExitStatus.FINE : ExitStatus.FINDINGS;
  }

  private Path folder() {
    if (to == null) {
      throw new UsageProblem("load: say where the card is with --to DIR; --drives lists them");
    }
    if (!Files.isDirectory(to)) {
      throw new UsageProblem(to + ": no such folder; is the card in and mounted?");
    }
    return to;
  }

  /** The drive that holds the folder: the one with the longest root. */
  private Optional<Drive> drive() throws IOException {
    Path whole = to.toRealPath();
    return systemDrives().stream()
        .filter(d -> whole.startsWith(d.root()))
        .max(java.util.Comparator.comparingInt(d -> d.root().getNameCount()))
        .filter(Drive::removable);
  }

  private Integer listDrives() throws IOException {
    List<Drive> removable = systemDrives().stream().filter(Drive::removable).toList();
    new LoadPrinter(spec, format.json()).drives(removable);
    return ExitStatus.FINE;
  }

  private static List<Drive> systemDrives() throws IOException {
    return Drives.ofSystem(System.getProperty("os.name", "")).now();
  }
}
