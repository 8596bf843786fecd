package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Executor;

/** Saves a printer, and keeps its unsaved edits against a crash within a second of each. */
public final class Keeper implements AutoCloseable {
  private final PrinterDesk desk;
  private final RecoveryStore recovery;
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

  /** Edits of an earlier run that never reached the file come back as one step to undo. */
  public void restore() {
    recovery
        .find(file())
        .filter(kept -> !kept.equals(desk.profile()))
        .ifPresent(
            kept -> {
              desk.values().change(Texts.of("keep.restored"), "", now -> kept);
              said.set(Texts.of("keep.restored.words"));
            });
  }

  /** The last thing worth saying about keeping and saving. */
  public Cell<String> said() {
    return said;
  }

  /** Saves the profile to its own file. */
  public void save() {
    try {
      ProfileStore.save(desk.profile(), file());
      desk.values().markSaved();
      keeping.put(new Kept(desk.profile(), true));
      said.set(Texts.of("keep.saved", file().getFileName()));
    } catch (IOException failed) {
      said.set(Texts.of("keep.unsaved", file(), failed.getMessage()));
    }
  }

  @Override
  public void close() {
    follow.close();
  }
}
