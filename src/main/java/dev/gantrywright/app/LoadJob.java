package dev.gantrywright.app;

import dev.gantrywright.image.Verdict;
import dev.gantrywright.load.Card;
import dev.gantrywright.load.CardCheck;
import dev.gantrywright.load.CopyReport;
import dev.gantrywright.load.CopyStep;
import dev.gantrywright.load.Drive;
import dev.gantrywright.load.Hashes;
import dev.gantrywright.load.KeptImages;
import dev.gantrywright.load.LoadHistory;
import dev.gantrywright.load.LoadOutcome;
import dev.gantrywright.load.LoadProblem;
import dev.gantrywright.load.LoadRemark;
import dev.gantrywright.load.LoaderSign;
import dev.gantrywright.load.PendingLoad;
import dev.gantrywright.load.ReturnedCard;
import dev.gantrywright.load.Uf2Copy;
import dev.gantrywright.load.Uf2Drive;
import dev.gantrywright.load.VerifiedCopy;
import dev.gantrywright.machine.BoardSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Loads an image onto a card for one board, remembers it, and reads the card that comes back. */
public final class LoadJob {
  /**
   * What is to be loaded.
   *
   * @param file where the image came from
   * @param image its bytes
   * @param name the name on the card
   * @param drive what is known of the drive
   * @param verdict what the judge says, where the controller is known
   * @param reason why errors are overridden
   */
  public record Request(
      Path file,
      byte[] image,
      String name,
      Card card,
      Optional<Drive> drive,
      Optional<Verdict> verdict,
      Optional<String> reason) {}

  /** What was done. */
  public record Done(CopyReport report, PendingLoad pending, List<LoadRemark> remarks) {
    public Done {
      remarks = List.copyOf(remarks);
    }
  }

  /** The load is refused; the message is the one line that says why. */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused(String line) {
      super(line);
    }
  }

  private static final Duration BOARD_RESTARTS_WITHIN = Duration.ofSeconds(15);

  private final Optional<BoardSheet> sheet;
  private final Path folder;
  private final Clock clock;
  private final Consumer<CopyStep> steps;

  /**
   * @param sheet the board, where it is known
   * @param records where histories and replaced images are kept
   * @param steps hears each step of the copy
   */
  public LoadJob(Optional<BoardSheet> sheet, Path records, Clock clock, Consumer<CopyStep> steps) {
    this.sheet = sheet;
    this.folder = RecordPlace.of(records, sheet.map(BoardSheet::name).orElse("any board"));
    this.clock = clock;
    this.steps = steps;
  }

  /** The name that the board's loader looks for. */
  public Optional<String> looksFor() {
    return sheet.map(s -> s.loader().looksFor());
  }

  /** Images that were replaced on this board's cards. */
  public KeptImages kept() {
    return new KeptImages(folder.resolve("replaced"), clock);
  }

  public LoadHistory history() {
    return new LoadHistory(folder.resolve("loads.jsonl"));
  }

  /** What speaks against card and name. */
  public List<LoadRemark> remarks(Request r) {
    return r.drive()
        .map(d -> CardCheck.look(d, r.name(), looksFor(), r.image().length))
        .orElseGet(() -> CardCheck.name(r.name(), looksFor()));
  }

  /**
   * Copies, unless something speaks against it that no reason overrides.
   *
   * @throws Refused with one line
   * @throws LoadProblem where the card does not take it
   */
  public Done run(Request r) throws Refused, LoadProblem, IOException {
    return run(r, () -> false);
  }

  /**
   * The same for somebody who may change their mind.
   *
   * @param stopped asked before the image gets its name; true takes it back
   */
  public Done run(Request r, BooleanSupplier stopped) throws Refused, LoadProblem, IOException {
    Optional<String> refusal = r.verdict().flatMap(v -> v.refusal(r.reason()));
    if (refusal.isPresent()) {
      throw new Refused(refusal.get());
    }
    List<LoadRemark> remarks = remarks(r);
    Optional<LoadRemark> against = remarks.stream().filter(LoadRemark::error).findFirst();
    if (against.isPresent() && r.reason().isEmpty()) {
      throw new Refused(
          "load refused: "
              + against.get().text()
              + " "
              + against.get().todo()
              + " To load all the same, give a reason.");
    }
    Optional<String> renamedTo = sheet.map(s -> s.loader().renamedTo());
    Optional<String> before =
        renamedTo.isPresent() ? ReturnedCard.hashOf(r.card(), renamedTo.get()) : Optional.empty();
    CopyReport report =
        new VerifiedCopy(r.card(), kept(), clock, steps, stopped).copy(r.image(), r.name());
    PendingLoad pending =
        new PendingLoad(
            r.name(),
            report.sha256(),
            report.when(),
            sheet.map(s -> BoardFacts.sign(s.loader())).orElse(LoaderSign.NONE),
            renamedTo,
            before);
    remember(r, report.sha256(), r.card().shown(), Optional.of(pending));
    return new Done(report, pending, new ArrayList<>(remarks));
  }

  /**
   * Copies to a board that shows itself as a drive and waits for it to go away.
   *
   * @param there whether the drive is still there
   * @throws Refused with one line
   * @throws LoadProblem where the file could not be written while the drive stayed
   */
  public LoadOutcome drive(Request r, Uf2Drive board, BooleanSupplier there)
      throws Refused, LoadProblem, IOException {
    Optional<String> refusal = r.verdict().flatMap(v -> v.refusal(r.reason()));
    if (refusal.isPresent()) {
      throw new Refused(refusal.get());
    }
    LoadOutcome outcome =
        new Uf2Copy(r.card(), there, BOARD_RESTARTS_WITHIN).copy(r.image(), r.name());
    remember(r, Hashes.of(r.image()), "drive of " + board.model(), Optional.empty());
    return outcome;
  }

  /** Notes a load, whichever way it was done. */
  public void remember(Request r, String sha256, String to, Optional<PendingLoad> pending)
      throws IOException {
    history()
        .add(
            new LoadHistory.Entry(
                clock.instant(), r.file().toString(), sha256, to, r.reason().orElse(""), pending));
  }

  /** Reads a card that was in the machine; empty where nothing was put on one. */
  public Optional<LoadOutcome> returned(Card card) throws IOException {
    Optional<PendingLoad> pending = Optional.empty();
    for (LoadHistory.Entry e : history().all()) {
      pending = e.pending().isPresent() ? e.pending() : pending;
    }
    return pending.isEmpty()
        ? Optional.empty()
        : Optional.of(ReturnedCard.look(card, pending.get()));
  }
}
