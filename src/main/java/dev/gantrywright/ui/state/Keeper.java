package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import java.io.IOException;
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
  private final Cell<String> said = new Cell<>("");
  private final Subscription follow;

  private record Kept(PrinterProfile profile, boolean saved) {}

  /**
   * @param background writes; one write at a time, the newest edit next
   */
  public Keeper(PrinterDesk desk, RecoveryStore recovery, Executor background, Executor view) {
    this.desk = desk;
    this.recovery = recovery;
    this.background = background;
    this.view = view;
    this.keeping =
        new Latest<>(
            background,
            view,
            this::keep,
            (kept, done) -> {},
            (kept, failed) -> said.set(Texts.of("keep.failed", failed.getMessage())));
    follow =
        desk.values()
            .history()
            .listen(history -> keeping.put(new Kept(history.present(), history.isSaved())));
  }

  private boolean keep(Kept kept) {
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
      keeping.put(new Kept(profile, true));
    }
    said.set(Texts.of("keep.saved", to.getFileName()));
  }

  @Override
  public void close() {
    follow.close();
  }
}
