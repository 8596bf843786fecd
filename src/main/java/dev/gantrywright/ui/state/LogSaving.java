package dev.gantrywright.ui.state;

import dev.gantrywright.app.LineRecord;
import dev.gantrywright.link.ByteLog;
import dev.gantrywright.ui.quantity.HomePath;
import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/** Keeps a log beside the profile, off the view's thread; can be stopped. */
public final class LogSaving {
  private final Executor background;
  private final Executor view;
  private final Cell<Boolean> busy = new Cell<>(false);
  private final Cell<String> said = new Cell<>("");
  private AtomicBoolean stopped = new AtomicBoolean();

  public LogSaving(Executor background, Executor view) {
    this.background = background;
    this.view = view;
  }

  public Cell<Boolean> busy() {
    return busy;
  }

  /** How far it is, where the log was kept, or why not. */
  public Cell<String> said() {
    return said;
  }

  /** Begins, or stops what was begun. */
  public void keep(Path profile, ByteLog log) {
    if (busy.get()) {
      stopped.set(true);
      return;
    }
    AtomicBoolean stop = new AtomicBoolean();
    stopped = stop;
    busy.set(true);
    said.set(Texts.of("line.saving", 0));
    background.execute(
        () -> {
          String outcome = kept(profile, log, stop);
          view.execute(
              () -> {
                busy.set(false);
                said.set(outcome);
              });
        });
  }

  private String kept(Path profile, ByteLog log, AtomicBoolean stop) {
    int[] told = {0};
    try {
      Path file =
          LineRecord.keep(
              profile,
              log,
              share -> {
                int percent = (int) (share * 100);
                if (percent > told[0]) {
                  told[0] = percent;
                  view.execute(() -> progress(stop, percent));
                }
              },
              stop::get);
      return Texts.of("line.saved", HomePath.shown(file));
    } catch (CancellationException halted) {
      return Texts.of("line.save.stopped");
    } catch (IOException failed) {
      return Texts.of("line.save.failed", String.valueOf(failed.getMessage()));
    }
  }

  private void progress(AtomicBoolean of, int percent) {
    if (of == stopped && busy.get()) {
      said.set(Texts.of("line.saving", percent));
    }
  }
}
