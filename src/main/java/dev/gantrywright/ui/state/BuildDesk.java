package dev.gantrywright.ui.state;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.build.BuildCommand;
import dev.gantrywright.build.BuildHistory;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.Cleaning;
import dev.gantrywright.machine.BuiltImage;
import dev.gantrywright.ui.quantity.HomePath;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Runs the build command in the patched folder, off the view's thread, and can be cancelled. */
public final class BuildDesk {
  private static final int LINES = 400;

  private final Path records;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<BuildState> state = new Cell<>(BuildState.idle());
  private final Cell<List<BuildHistory.Entry>> earlier = new Cell<>(List.of());
  private final Cell<Optional<Cleaning>> cleaning = new Cell<>(Optional.empty());
  private final Consumer<BuiltImage> measured;
  private final Deque<String> lines = new ArrayDeque<>();
  private double share = -1;
  private boolean waiting;
  private BuildJob job;

  /**
   * @param records where build histories are kept
   * @param measured takes down what a build has left
   */
  public BuildDesk(
      Path records,
      Clock clock,
      Executor background,
      Executor view,
      Consumer<BuiltImage> measured) {
    this.measured = measured;
    this.records = records;
    this.clock = clock;
    this.background = background;
    this.view = view;
  }

  public Cell<BuildState> state() {
    return state;
  }

  /** Earlier builds of this printer, newest first, as last read. */
  public Cell<List<BuildHistory.Entry>> earlier() {
    return earlier;
  }

  /** What a clean step would delete; empty until somebody asks. */
  public Cell<Optional<Cleaning>> cleaning() {
    return cleaning;
  }

  /** Reads the earlier builds. */
  public void look(OpenPrinter printer) {
    background.execute(
        () -> {
          List<BuildHistory.Entry> all = earlier(printer);
          view.execute(() -> earlier.set(all));
        });
  }

  private List<BuildHistory.Entry> earlier(OpenPrinter printer) {
    try {
      List<BuildHistory.Entry> all =
          new ArrayList<>(BuildJob.history(records, printer.title()).all());
      Collections.reverse(all);
      return List.copyOf(all);
    } catch (IOException unreadable) {
      return List.of();
    }
  }

  /** Finds out what a clean step would delete; nothing is deleted yet. */
  public void askClean(OpenPrinter printer, Path folder) {
    background.execute(
        () -> {
          try {
            Cleaning plan = BuildJob.cleaning(printer, folder);
            view.execute(() -> cleaning.set(Optional.of(plan)));
          } catch (IOException failed) {
            view.execute(() -> said(failed.getMessage()));
          }
        });
  }

  /** Deletes what {@link #askClean} has shown, and nothing else. */
  public void clean() {
    Optional<Cleaning> plan = cleaning.get();
    cleaning.set(Optional.empty());
    if (plan.isEmpty() || state.get().kind() == BuildState.Kind.RUNNING) {
      return;
    }
    background.execute(
        () -> {
          try {
            int deleted = plan.get().run();
            view.execute(
                () ->
                    state.set(
                        BuildState.ended(
                            BuildState.Kind.IDLE, Texts.of("build.cleaned", deleted))));
          } catch (IOException failed) {
            view.execute(() -> said(failed.getMessage()));
          }
        });
  }

  /** Leaves the folder as it is. */
  public void keepAll() {
    cleaning.set(Optional.empty());
  }

  private void said(String problem) {
    state.set(BuildState.ended(BuildState.Kind.FAILED, problem));
  }

  /** Begins to build; does nothing while a build runs. */
  public void build(OpenPrinter printer, Path folder) {
    if (state.get().kind() == BuildState.Kind.RUNNING) {
      return;
    }
    if (!Files.isDirectory(folder)) {
      state.set(
          BuildState.ended(
              BuildState.Kind.FAILED, Texts.of("build.noPatched", HomePath.shown(folder))));
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
    cleaning.set(Optional.empty());
    state.set(BuildState.running(List.of(), -1));
    BuildJob mine = job;
    background.execute(() -> run(mine, printer));
  }

  private void run(BuildJob mine, OpenPrinter printer) {
    BuildState end;
    try {
      BuildJob.Done done = mine.run();
      end = new BuildState(kind(done), words(done), tail(), 1, Optional.of(done));
    } catch (IOException failed) {
      end = BuildState.ended(BuildState.Kind.FAILED, failed.getMessage());
    }
    BuildState last = end;
    List<BuildHistory.Entry> all = earlier(printer);
    view.execute(
        () -> {
          last.done().flatMap(BuildJob.Done::measured).ifPresent(measured);
          earlier.set(all);
          state.set(last);
        });
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
