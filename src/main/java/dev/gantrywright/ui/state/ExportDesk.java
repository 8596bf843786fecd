package dev.gantrywright.ui.state;

import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportException;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.ui.quantity.HomePath;
import java.nio.file.Path;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;

/** Writes the patched folder off the view's thread, with progress, and can be cancelled. */
public final class ExportDesk {
  /**
   * Told of a folder that was written, on the writing thread; gives what went wrong, or nothing.
   */
  public interface Written {
    String folder(PatchPlan plan, Manifest manifest, Path target);
  }

  private final Written written;
  private final Executor background;
  private final Executor view;
  private final Cell<ExportState> state = new Cell<>(ExportState.idle());
  private final AtomicReference<ExportState> waiting = new AtomicReference<>();
  private AtomicBoolean cancelled = new AtomicBoolean();

  public ExportDesk(Executor background, Executor view) {
    this(background, view, (plan, manifest, target) -> "");
  }

  public ExportDesk(Executor background, Executor view, Written written) {
    this.written = written;
    this.background = background;
    this.view = view;
  }

  public Cell<ExportState> state() {
    return state;
  }

  /** Begins to write; does nothing while a folder is being written. */
  public void write(PatchPlan plan, Path target, boolean replace) {
    if (state.get().kind() == ExportState.Kind.WRITING) {
      return;
    }
    AtomicBoolean stop = new AtomicBoolean();
    cancelled = stop;
    state.set(new ExportState(ExportState.Kind.WRITING, 0, target, Texts.of("write.starting")));
    background.execute(() -> finish(run(plan, target, replace, stop)));
  }

  private ExportState run(PatchPlan plan, Path target, boolean replace, AtomicBoolean stop) {
    try {
      Manifest manifest =
          Export.write(
              plan,
              target,
              replace,
              (done, total, path) -> progress(done, total, path, target),
              stop::get);
      String words =
          Texts.of("write.done", HomePath.shown(target))
              + " "
              + written.folder(plan, manifest, target);
      return new ExportState(ExportState.Kind.DONE, 1, target, words.strip());
    } catch (ExportException failed) {
      boolean occupied =
          failed.kind() == ExportException.Kind.REFUSED
              && failed.getMessage().contains("not empty");
      return new ExportState(
          failed.kind() == ExportException.Kind.CANCELLED
              ? ExportState.Kind.CANCELLED
              : occupied ? ExportState.Kind.OCCUPIED : ExportState.Kind.FAILED,
          0,
          target,
          failed.getMessage());
    } catch (RuntimeException broken) {
      return new ExportState(
          ExportState.Kind.FAILED, 0, target, Texts.of("write.broken", broken.getMessage()));
    }
  }

  /** On the writing thread; the view takes only the newest. */
  private void progress(int done, int total, String path, Path target) {
    ExportState next =
        new ExportState(ExportState.Kind.WRITING, (double) done / total, target, path);
    if (waiting.getAndSet(next) == null) {
      view.execute(
          () -> {
            ExportState newest = waiting.getAndSet(null);
            if (newest != null && state.get().kind() == ExportState.Kind.WRITING) {
              state.set(newest);
            }
          });
    }
  }

  private void finish(ExportState end) {
    view.execute(() -> state.set(end));
  }

  /** Another firmware folder is open: what was written from the former one is no longer news. */
  public void forget() {
    if (state.get().kind() != ExportState.Kind.WRITING) {
      state.set(ExportState.idle());
    }
  }

  /** Stops before the next file; nothing is left behind. */
  public void cancel() {
    cancelled.set(true);
  }
}
