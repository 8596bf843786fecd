package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Saves a printer, and keeps its unsaved edits against a crash within a second of each. */
public final class Keeper implements AutoCloseable {
  private final PrinterDesk desk;
  private final RecoveryStore recovery;
  private final Executor background;
  private final Executor view;
  private final Latest<Kept, Boolean> keeping;
  private volatile Kept newest;
  private Kept written;
  private final Cell<String> said = new Cell<>("");
  private final Subscription follow;

  private record Kept(PrinterProfile profile, boolean saved) {}

  /**
   * @param background writes what is saved
   * @param later writes unsaved edits in the pauses between keystrokes, well within a second
   */
  public Keeper(
      PrinterDesk desk,
      RecoveryStore recovery,
      Executor background,
      Executor later,
      Executor view) {
    this.desk = desk;
    this.recovery = recovery;
    this.background = background;
    this.view = view;
    this.keeping =
        new Latest<>(
            later,
            view,
            kept -> keep(),
            (kept, done) -> {},
            (kept, failed) -> said.set(Texts.of("keep.failed", failed.getMessage())));
    PrinterProfile first = desk.profile();
    later.execute(() -> recovery.prepare(first));
    follow = desk.values().history().listen(history -> keep(history.present(), history.isSaved()));
  }

  private void keep(PrinterProfile profile, boolean saved) {
    newest = new Kept(profile, saved);
    keeping.put(newest);
  }

  /** The newest edit when it is written, not when it was typed. */
  private synchronized boolean keep() {
    Kept kept = newest;
    if (kept == written) {
      return false;
    }
    written = kept;
    if (kept.saved()) {
      recovery.drop(file());
    } else {
      recovery.keep(file(), kept.profile());
    }
    return true;
  }

  private Path file() {
    return desk.opened().get().file();
  }

  /**
   * Edits of an earlier run that never reached the file come back as one step to undo.
   *
   * @param kept what {@link RecoveryStore#find} gave
   */
  public void restore(Optional<PrinterProfile> kept) {
    kept.filter(profile -> !profile.equals(desk.profile()))
        .ifPresent(
            profile -> {
              desk.values().change(Texts.of("keep.restored"), "", now -> profile);
              said.set(Texts.of("keep.restored.words"));
            });
  }

  /** The last thing worth saying about keeping and saving. */
  public Cell<String> said() {
    return said;
  }

  /** Saves the profile to its own file, off the view's thread. */
  public void save() {
    PrinterProfile profile = desk.profile();
    Path to = file();
    background.execute(
        () -> {
          String problem = write(profile, to);
          view.execute(() -> saved(profile, to, problem));
        });
  }

  private static String write(PrinterProfile profile, Path to) {
    try {
      ProfileStore.save(profile, to);
      return "";
    } catch (IOException failed) {
      return failed.getMessage() == null ? failed.toString() : failed.getMessage();
    }
  }

  /** What was typed while the file was written stays unsaved. */
  private void saved(PrinterProfile profile, Path to, String problem) {
    if (!problem.isEmpty()) {
      said.set(Texts.of("keep.unsaved", to, problem));
      return;
    }
    desk.values().markSaved(profile);
    if (desk.profile().equals(profile)) {
      keep(profile, true);
    }
    said.set(Texts.of("keep.saved", to.getFileName()));
  }

  @Override
  public void close() {
    follow.close();
    keeping.forget();
    background.execute(this::keepLast);
  }

  /** Keeps what was typed in the last moment; does nothing where that is done. */
  public void keepLast() {
    try {
      keep();
    } catch (UncheckedIOException failed) {
      // The window that would say so is closed; what was kept before stands.
      return;
    }
  }
}
