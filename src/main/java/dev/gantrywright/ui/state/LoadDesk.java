package dev.gantrywright.ui.state;

import dev.gantrywright.app.LoadJob;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.load.CopyStep;
import dev.gantrywright.load.Drive;
import dev.gantrywright.load.Drives;
import dev.gantrywright.load.FolderCard;
import dev.gantrywright.load.LoadOutcome;
import dev.gantrywright.load.LoadProblem;
import dev.gantrywright.machine.BoardSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;

/** Copies an image onto a card, verified, off the view's thread; reads the card that comes back. */
public final class LoadDesk {
  private final Supplier<Optional<BoardSheet>> sheet;
  private final Path records;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<LoadState> state = new Cell<>(LoadState.idle());
  private final Cell<List<Drive>> drives = new Cell<>(List.of());

  /**
   * @param records where histories and replaced images are kept
   */
  public LoadDesk(
      Supplier<Optional<BoardSheet>> sheet,
      Path records,
      Clock clock,
      Executor background,
      Executor view) {
    this.sheet = sheet;
    this.records = records;
    this.clock = clock;
    this.background = background;
    this.view = view;
  }

  public Cell<LoadState> state() {
    return state;
  }

  /** Drives that can be taken out, as last looked for. */
  public Cell<List<Drive>> drives() {
    return drives;
  }

  /** Looks for drives again. */
  public void look() {
    background.execute(
        () -> {
          List<Drive> found = List.of();
          try {
            found = now().stream().filter(Drive::removable).toList();
          } catch (IOException unreadable) {
            found = List.of();
          }
          List<Drive> all = found;
          view.execute(() -> drives.set(all));
        });
  }

  private static List<Drive> now() throws IOException {
    return Drives.ofSystem(System.getProperty("os.name")).now();
  }

  /**
   * Copies; does nothing while a copy runs.
   *
   * @param verdict what the judge says of the image, where it was judged
   */
  public void copy(Path image, Path card, String name, Optional<Verdict> verdict) {
    if (state.get().kind() == LoadState.Kind.COPYING) {
      return;
    }
    state.set(new LoadState(LoadState.Kind.COPYING, Optional.empty(), Texts.of("load.copying")));
    background.execute(
        () -> {
          LoadState end = run(image, card, name, verdict);
          view.execute(() -> state.set(end));
        });
  }

  private LoadState run(Path image, Path card, String name, Optional<Verdict> verdict) {
    try {
      if (!Files.isDirectory(card)) {
        return failed(Texts.of("load.noCard", card));
      }
      Path root = card.toRealPath();
      Optional<Drive> drive = now().stream().filter(d -> d.root().equals(root)).findFirst();
      LoadJob.Request request =
          new LoadJob.Request(
              image,
              Files.readAllBytes(image),
              name,
              new FolderCard(card),
              drive,
              verdict,
              Optional.empty());
      LoadJob.Done done = job().run(request);
      return new LoadState(
          LoadState.Kind.COPIED,
          Optional.of(CopyStep.DONE),
          Texts.of(
              "load.copied",
              done.report().name(),
              done.report().bytes(),
              done.report().sha256().substring(0, 12)));
    } catch (LoadJob.Refused | LoadProblem | IOException why) {
      return failed(why.getMessage());
    }
  }

  private LoadJob job() {
    return new LoadJob(
        sheet.get(),
        records,
        clock,
        step ->
            view.execute(
                () -> {
                  if (state.get().kind() == LoadState.Kind.COPYING) {
                    state.set(
                        new LoadState(LoadState.Kind.COPYING, Optional.of(step), step.words()));
                  }
                }));
  }

  private static LoadState failed(String why) {
    return new LoadState(LoadState.Kind.FAILED, Optional.empty(), why);
  }

  /** Reads the card that has been in the board: whether the image was loaded. */
  public void returned(Path card) {
    background.execute(
        () -> {
          LoadState end;
          try {
            Optional<LoadOutcome> outcome = job().returned(new FolderCard(card));
            end = outcome.map(LoadDesk::told).orElseGet(() -> failed(Texts.of("load.noPending")));
          } catch (IOException unreadable) {
            end = failed(unreadable.getMessage());
          }
          LoadState last = end;
          view.execute(() -> state.set(last));
        });
  }

  private static LoadState told(LoadOutcome outcome) {
    LoadState.Kind kind =
        switch (outcome.state()) {
          case LOADED -> LoadState.Kind.LOADED;
          case NOT_LOADED -> LoadState.Kind.FAILED;
          case UNSURE -> LoadState.Kind.UNSURE;
        };
    return new LoadState(kind, Optional.empty(), outcome.text() + " " + outcome.todo());
  }
}
