package dev.gantrywright.build;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
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

  /** Hands over each line until the output ends; returns the exit status. */
  int follow(Consumer<String> onLine) throws IOException {
    LineCutter cutter = new LineCutter(LONGEST_LINE, onLine);
    try (InputStream out = process.getInputStream()) {
      byte[] buffer = new byte[16384];
      for (int n = out.read(buffer); n >= 0; n = out.read(buffer)) {
        cutter.take(buffer, n);
      }
    } catch (IOException e) {
      // A stream closed by the end of a cancelled process is its end, not a failure.
      if (!ended) {
        throw e;
      }
    }
    cutter.end();
    try {
      return process.waitFor();
    } catch (InterruptedException e) {
      end();
      Thread.currentThread().interrupt();
      return -1;
    }
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
