package dev.gantrywright.ui.state;

import dev.gantrywright.app.ChosenImage;
import dev.gantrywright.app.LoadJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.load.Drive;
import dev.gantrywright.load.Drives;
import dev.gantrywright.load.FolderCard;
import dev.gantrywright.load.LoadOutcome;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;

/**
 * The image in hand and its way onto the board: judged, then copied or handed to a command, off the
 * view's thread.
 */
public final class LoadDesk {
  private final Supplier<OpenPrinter> printer;
  private final Supplier<Path> patched;
  private final Path records;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<LoadState> state = new Cell<>(LoadState.idle());
  private final Cell<List<Drive>> drives = new Cell<>(List.of());
  private final Cell<JudgedFile> image = new Cell<>(JudgedFile.none());
  private final Cell<List<Path>> kept = new Cell<>(List.of());
  private final AtomicBoolean waiting = new AtomicBoolean();
  private volatile LoadRun run;

  /**
   * @param patched the printer's patched folder; null where none is proposed
   * @param records where histories and replaced images are kept
   */
  public LoadDesk(
      Supplier<OpenPrinter> printer,
      Supplier<Path> patched,
      Path records,
      Clock clock,
      Executor background,
      Executor view) {
    this.printer = printer;
    this.patched = patched;
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

  /** The image that is to be loaded. */
  public Cell<JudgedFile> image() {
    return image;
  }

  /** Images to go back to, newest first. */
  public Cell<List<Path>> kept() {
    return kept;
  }

  /** What is shown where card or name are not given. */
  public static LoadState missing() {
    return LoadState.of(LoadState.Kind.FAILED, Texts.of("load.missing"));
  }

  /** Looks for drives and for kept images again. */
  public void look() {
    background.execute(
        () -> {
          List<Drive> found = removable();
          List<Path> images = keptImages();
          view.execute(
              () -> {
                drives.set(found);
                kept.set(images);
              });
        });
  }

  private static List<Drive> removable() {
    try {
      return now().stream().filter(Drive::removable).toList();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  private List<Path> keptImages() {
    try {
      return job(printer.get()).kept().all();
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  static List<Drive> now() throws IOException {
    return Drives.ofSystem(System.getProperty("os.name")).now();
  }

  /** Reads and judges an image. */
  public void choose(Path file) {
    image.set(JudgedFile.reading(file));
    OpenPrinter now = printer.get();
    Path folder = patched.get();
    background.execute(
        () -> {
          JudgedFile read = read(now, file, folder);
          view.execute(
              () -> {
                if (file.equals(image.get().file())) {
                  image.set(read);
                }
              });
        });
  }

  private JudgedFile read(OpenPrinter now, Path file, Path folder) {
    try {
      return new JudgedFile(file, Optional.of(ChosenImage.of(now, file, folder, records)), "");
    } catch (IOException unreadable) {
      return new JudgedFile(file, Optional.empty(), unreadable.getMessage());
    }
  }

  /**
   * Copies to a card, or to a board that shows itself as a drive; does nothing while a load runs.
   *
   * @param reason why a refused image is loaded all the same; blank where none is given
   */
  public void copy(Path card, String name, String reason) {
    start(LoadState.Kind.COPYING, Texts.of("load.copying"), made -> made.copy(card, name, reason));
  }

  /**
   * Runs a flashing command; does nothing while a load runs.
   *
   * @param words with {@code {file}} for the image
   * @param confirm the sentence that a whole-chip erase asks for
   */
  public void flash(List<String> words, String confirm, String reason) {
    start(
        LoadState.Kind.FLASHING,
        Texts.of("load.flashing"),
        made -> made.flash(words, confirm, reason));
  }

  private interface Act {
    LoadState on(LoadRun run);
  }

  private void start(LoadState.Kind kind, String words, Act act) {
    JudgedFile chosen = image.get();
    if (state.get().busy()) {
      return;
    }
    if (chosen.file() == null || !chosen.problem().isEmpty()) {
      state.set(
          chosen.file() == null
              ? missing()
              : LoadState.of(LoadState.Kind.FAILED, chosen.problem()));
      return;
    }
    state.set(LoadState.of(kind, words));
    OpenPrinter now = printer.get();
    Path folder = patched.get();
    background.execute(
        () -> {
          // An image that is still being read in is read here: the bytes loaded are those judged.
          JudgedFile read = chosen.image().isPresent() ? chosen : read(now, chosen.file(), folder);
          LoadState end = run(read, now, act);
          List<Path> images = keptImages();
          view.execute(
              () -> {
                image.set(read);
                state.set(end);
                kept.set(images);
              });
        });
  }

  private LoadState run(JudgedFile read, OpenPrinter now, Act act) {
    if (read.image().isEmpty()) {
      return LoadState.of(LoadState.Kind.FAILED, read.problem());
    }
    LoadRun made = new LoadRun(job(now), now, read.image().get(), clock, this::lines);
    run = made;
    return act.on(made);
  }

  /** Ends a flashing command that runs. */
  public void cancel() {
    LoadRun now = run;
    if (now != null) {
      now.cancel();
    }
  }

  private LoadJob job(OpenPrinter now) {
    return new LoadJob(
        Optional.ofNullable(now.sheet()),
        records,
        clock,
        step ->
            view.execute(
                () -> {
                  if (state.get().kind() == LoadState.Kind.COPYING) {
                    state.set(LoadState.at(step));
                  }
                }));
  }

  /** On the command's thread: the view takes what is there when it comes to look. */
  private void lines() {
    if (waiting.compareAndSet(false, true)) {
      view.execute(
          () -> {
            waiting.set(false);
            LoadState now = state.get();
            if (now.kind() == LoadState.Kind.FLASHING) {
              state.set(new LoadState(now.kind(), now.step(), now.words(), run.last()));
            }
          });
    }
  }

  /** Reads the card that has been in the board: whether the image was loaded. */
  public void returned(Path card) {
    if (state.get().busy()) {
      return;
    }
    OpenPrinter now = printer.get();
    background.execute(
        () -> {
          LoadState end;
          try {
            Optional<LoadOutcome> outcome = job(now).returned(new FolderCard(card));
            end =
                outcome
                    .map(LoadRun::told)
                    .orElseGet(
                        () -> LoadState.of(LoadState.Kind.FAILED, Texts.of("load.noPending")));
          } catch (IOException unreadable) {
            end = LoadState.of(LoadState.Kind.FAILED, unreadable.getMessage());
          }
          LoadState last = end;
          view.execute(() -> state.set(last));
        });
  }
}
