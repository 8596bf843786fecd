package dev.gantrywright.build;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * A running command with everything that it started, also what has lost its parent since: every
 * process carries a mark in its environment by which it is found again.
 */
final class ProcessTree {
  private static final String MARK = "GANTRYWRIGHT_BUILD";
  private static final long GRACE_MILLIS = 2000;
  private static final int LONGEST_LINE = 8192;

  /** How long the output of a command that has ended may stay open without a word. */
  private static final long QUIET_NANOS = TimeUnit.SECONDS.toNanos(3);

  private final Process process;
  private final String mark;
  private final MarkedProcesses marked;
  private volatile boolean ended;

  private ProcessTree(Process process, String mark) {
    this.process = process;
    this.mark = mark;
    this.marked = MarkedProcesses.ofSystem();
  }

  static ProcessTree start(BuildCommand command) throws IOException {
    String mark = UUID.randomUUID().toString();
    ProcessBuilder builder =
        new ProcessBuilder(command.words())
            .directory(command.folder().toFile())
            .redirectErrorStream(true)
            .redirectInput(ProcessBuilder.Redirect.from(nothing()));
    // Messages in the C locale are the ones that can be read.
    builder.environment().put("LC_ALL", "C");
    builder.environment().putAll(command.environment());
    builder.environment().put(MARK, mark);
    return new ProcessTree(builder.start(), mark);
  }

  private static java.io.File nothing() {
    boolean windows = System.getProperty("os.name", "").startsWith("Windows");
    return new java.io.File(windows ? "NUL" : "/dev/null");
  }

  /**
   * Hands over each line and returns the exit status once the command has ended and its output has
   * too. A helper that stays behind and holds the output open is waited for only as long as it says
   * something.
   */
  int follow(Consumer<String> onLine) throws IOException {
    AtomicReference<IOException> failure = new AtomicReference<>();
    AtomicLong lastHeard = new AtomicLong(System.nanoTime());
    AtomicBoolean listening = new AtomicBoolean(true);
    Thread reader =
        new Thread(() -> read(onLine, lastHeard, listening, failure), "output of a build");
    reader.setDaemon(true);
    reader.start();
    try {
      int exit = process.waitFor();
      lastHeard.accumulateAndGet(System.nanoTime(), Math::max);
      while (reader.isAlive() && System.nanoTime() - lastHeard.get() < QUIET_NANOS) {
        reader.join(50);
      }
      synchronized (listening) {
        listening.set(false);
      }
      if (failure.get() != null && !ended) {
        throw failure.get();
      }
      return exit;
    } catch (InterruptedException e) {
      end();
      Thread.currentThread().interrupt();
      return -1;
    }
  }

  private void read(
      Consumer<String> onLine,
      AtomicLong lastHeard,
      AtomicBoolean listening,
      AtomicReference<IOException> failure) {
    Consumer<String> whileListening =
        line -> {
          synchronized (listening) {
            if (listening.get()) {
              onLine.accept(line);
            }
          }
        };
    LineCutter cutter = new LineCutter(LONGEST_LINE, whileListening);
    try (InputStream out = process.getInputStream()) {
      byte[] buffer = new byte[16384];
      for (int n = out.read(buffer); n >= 0; n = out.read(buffer)) {
        lastHeard.set(System.nanoTime());
        cutter.take(buffer, n);
      }
    } catch (IOException e) {
      // A stream closed by the end of a cancelled process is its end, not a failure.
      failure.set(e);
    }
    cutter.end();
  }

  /** Asks all to end, and after a moment ends what is left. */
  void end() {
    ended = true;
    Set<ProcessHandle> all = all();
    all.forEach(ProcessHandle::destroy);
    long until = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(GRACE_MILLIS);
    while (all.stream().anyMatch(ProcessHandle::isAlive) && System.nanoTime() < until) {
      pause();
    }
    // Each round may find what was started between the last look and its end.
    for (int round = 0; round < 50; round++) {
      all = all();
      if (all.stream().noneMatch(ProcessHandle::isAlive)) {
        return;
      }
      all.forEach(ProcessHandle::destroyForcibly);
      pause();
    }
  }

  private Set<ProcessHandle> all() {
    Set<ProcessHandle> out = new LinkedHashSet<>();
    try (Stream<ProcessHandle> below = process.toHandle().descendants()) {
      List<ProcessHandle> found = below.toList();
      out.addAll(found);
    }
    out.addAll(marked.with(MARK + "=" + mark));
    if (process.isAlive()) {
      out.add(process.toHandle());
    }
    return out;
  }

  private static void pause() {
    try {
      TimeUnit.MILLISECONDS.sleep(20);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
