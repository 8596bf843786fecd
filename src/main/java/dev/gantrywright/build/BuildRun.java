package dev.gantrywright.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * One build: runs the command, follows it, tries once more where the failure looks transient, finds
 * the image. Run it on a thread of its own; {@link #cancel} may come from any thread.
 */
public final class BuildRun {
  private static final int LINES_KEPT = 200;

  private final BuildCommand command;
  private final ArtefactPattern pattern;
  private final BuildListener listener;
  private final Clock clock;
  private final TransientFailures transientFailures;
  private final Object guard = new Object();
  private ProcessTree running;
  private boolean cancelled;

  /**
   * @param pattern of the image; {@link ArtefactPattern#none} where the build leaves none
   */
  public BuildRun(
      BuildCommand command, ArtefactPattern pattern, BuildListener listener, Clock clock) {
    this.command = command;
    this.pattern = pattern;
    this.listener = listener;
    this.clock = clock;
    this.transientFailures = TransientFailures.shipped();
  }

  /** What one attempt left. */
  private record Attempt(
      int exit, List<Diagnostic> diagnostics, List<ReportedSize> sizes, List<String> lines) {}

  /** Builds; returns when the command and everything that it started have ended. */
  public BuildResult run() {
    return run(true);
  }

  /** Runs the command once, whatever comes: for commands that must not be repeated unasked. */
  public BuildResult runOnce() {
    return run(false);
  }

  private BuildResult run(boolean mayTryAgain) {
    Instant start = clock.instant();
    if (!Files.isDirectory(command.folder())) {
      return notStarted(start, "no such folder to build in: " + command.folder());
    }
    try {
      Attempt first = attempt(1);
      Optional<String> again = mayTryAgain ? secondTry(first) : Optional.empty();
      Attempt last = again.isPresent() ? attempt(2) : first;
      return result(start, last, again);
    } catch (IOException e) {
      return notStarted(
          start,
          "cannot start "
              + command.words().get(0)
              + ": "
              + plain(e)
              + "; check the name, or give its full path");
    }
  }

  /** Ends the command and every process that it started. Safe at any time, and twice. */
  public void cancel() {
    synchronized (guard) {
      cancelled = true;
      if (running != null) {
        running.end();
      }
    }
  }

  private boolean cancelled() {
    synchronized (guard) {
      return cancelled;
    }
  }

  private Attempt attempt(int number) throws IOException {
    Deque<String> last = new ArrayDeque<>();
    List<ReportedSize> sizes = new ArrayList<>();
    List<Diagnostic> diagnostics = new ArrayList<>();
    DiagnosticReader reader =
        new DiagnosticReader(
            d -> {
              diagnostics.add(d);
              listener.diagnostic(d);
            });
    SizeReader sizeReader = new SizeReader(sizes::add);
    ProgressReader progress = new ProgressReader(listener::progress);
    listener.started(command, number);
    ProcessTree tree;
    synchronized (guard) {
      if (cancelled) {
        return new Attempt(-1, List.of(), List.of(), List.of());
      }
      tree = ProcessTree.start(command);
      running = tree;
    }
    int exit =
        tree.follow(
            line -> {
              last.addLast(line);
              if (last.size() > LINES_KEPT) {
                last.removeFirst();
              }
              listener.line(line);
              reader.line(line);
              sizeReader.line(line);
              progress.line(line);
            });
    reader.end();
    synchronized (guard) {
      running = null;
    }
    return new Attempt(exit, diagnostics, sizes, List.copyOf(last));
  }

  private Optional<String> secondTry(Attempt first) {
    if (first.exit() == 0 || cancelled()) {
      return Optional.empty();
    }
    Optional<String> reason = transientFailures.reason(first.lines(), first.diagnostics());
    reason.ifPresent(listener::secondTry);
    return reason;
  }

  private BuildResult result(Instant start, Attempt last, Optional<String> again) {
    Optional<Path> artefact = Optional.empty();
    BuildResult.Outcome outcome = BuildResult.Outcome.FAILED;
    Optional<String> problem = Optional.empty();
    if (cancelled()) {
      outcome = BuildResult.Outcome.CANCELLED;
    } else if (last.exit() == 0) {
      artefact = pattern.newest(command.folder());
      boolean left = artefact.isPresent() || pattern.wantsNothing();
      outcome = left ? BuildResult.Outcome.BUILT : BuildResult.Outcome.NO_ARTEFACT;
      problem =
          left
              ? Optional.empty()
              : Optional.of(
                  "the build ended well, but no file matches "
                      + pattern.text()
                      + " in "
                      + command.folder()
                      + "; correct the artefact pattern");
    }
    return new BuildResult(
        outcome,
        cancelled() ? -1 : last.exit(),
        again.isPresent() ? 2 : 1,
        again,
        start,
        Duration.between(start, clock.instant()),
        last.diagnostics(),
        last.sizes(),
        artefact,
        last.lines(),
        problem);
  }

  private BuildResult notStarted(Instant start, String problem) {
    return new BuildResult(
        BuildResult.Outcome.NOT_STARTED,
        -1,
        1,
        Optional.empty(),
        start,
        Duration.between(start, clock.instant()),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        Optional.of(problem));
  }

  private static String plain(IOException e) {
    String text = String.valueOf(e.getMessage());
    int comma = text.lastIndexOf(", ");
    return comma < 0 ? text : text.substring(comma + 2);
  }
}
