package dev.gantrywright.ui.state;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.build.BuildCommand;
import dev.gantrywright.build.BuildListener;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** Runs the build command in the patched folder, off the view's thread, and can be cancelled. */
public final class BuildDesk {
  private static final int LINES = 400;

  private final Path records;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<BuildState> state = new Cell<>(BuildState.idle());
  private final Deque<String> lines = new ArrayDeque<>();
  private double share = -1;
  private boolean waiting;
  private BuildJob job;

  /**
   * @param records where build histories are kept
   */
  public BuildDesk(Path records, Clock clock, Executor background, Executor view) {
    this.records = records;
    this.clock = clock;
    this.background = background;
    this.view = view;
  }

  public Cell<BuildState> state() {
    return state;
  }

  /** Begins to build; does nothing while a build runs. */
  public void build(OpenPrinter printer, Path folder) {
    if (state.get().kind() == BuildState.Kind.RUNNING) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      state.set(BuildState.ended(BuildState.Kind.FAILED, Texts.of("build.noPatched", folder)));
      return;
    }
    synchronized (lines) {
      lines.clear();
      share = -1;
    }
    try {
      job = new BuildJob(printer, folder, records, listener(), clock);
    } catch (IllegalArgumentException unusable) {
      state.set(BuildState.ended(BuildState.Kind.FAILED, unusable.getMessage()));
      return;
    }
    state.set(BuildState.running(List.of(), -1));
    BuildJob mine = job;
    background.execute(() -> run(mine));
  }

  private void run(BuildJob mine) {
    BuildState end;
    try {
      BuildJob.Done done = mine.run();
      end = new BuildState(kind(done), words(done), tail(), 1, Optional.of(done));
    } catch (IOException failed) {
      end = BuildState.ended(BuildState.Kind.FAILED, failed.getMessage());
    }
    BuildState last = end;
    view.execute(() -> state.set(last));
  }

  private static BuildState.Kind kind(BuildJob.Done done) {
    return switch (done.build().outcome()) {
      case BUILT -> done.good() ? BuildState.Kind.BUILT : BuildState.Kind.REFUSED;
      case CANCELLED -> BuildState.Kind.CANCELLED;
      default -> BuildState.Kind.FAILED;
    };
  }

  private static String words(BuildJob.Done done) {
    String problem = done.build().problem().or(done::imageProblem).orElse("");
    if (!problem.isEmpty()) {
      return problem;
    }
    return Texts.of(
        "build.ended." + done.build().outcome().name().toLowerCase(java.util.Locale.ROOT),
        done.build().took().toMillis() / 1000.0,
        done.build().errors(),
        done.build().warnings());
  }

  /** On the build's threads: the view takes what is there when it comes to look. */
  private BuildListener listener() {
    return new BuildListener() {
      @Override
      public void started(BuildCommand command, int attempt) {
        line("$ " + command.shown());
      }

      @Override
      public void line(String text) {
        synchronized (lines) {
          lines.addLast(text);
          if (lines.size() > LINES) {
            lines.removeFirst();
          }
        }
        tell();
      }

      @Override
      public void progress(double done) {
        synchronized (lines) {
          share = done;
        }
        tell();
      }
    };
  }

  private void tell() {
    synchronized (lines) {
      if (waiting) {
        return;
      }
      waiting = true;
    }
    view.execute(
        () -> {
          List<String> now;
          double done;
          synchronized (lines) {
            waiting = false;
            now = List.copyOf(lines);
            done = share;
          }
          if (state.get().kind() == BuildState.Kind.RUNNING) {
            state.set(BuildState.running(now, done));
          }
        });
  }

  private List<String> tail() {
    synchronized (lines) {
      return List.copyOf(lines);
    }
  }

  public void cancel() {
    if (job != null) {
      job.cancel();
    }
  }
}
