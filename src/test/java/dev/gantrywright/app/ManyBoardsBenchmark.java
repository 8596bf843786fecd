package dev.gantrywright.app;

import dev.gantrywright.app.ManyProofs.Board;
import dev.gantrywright.app.ManyProofs.Outcome;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Proves many practice boards at once, again and again, and prints time, memory and threads. The
 * boards live in the same process; what they take is measured before the proofs and taken off.
 */
public final class ManyBoardsBenchmark {
  private static final int ROUNDS = 5;

  private ManyBoardsBenchmark() {}

  public static void main(String[] args) throws Exception {
    int count = Integer.parseInt(args[0]);
    int atOnce = Integer.parseInt(args[1]);
    try (PracticeFleet fleet = new PracticeFleet()) {
      List<Board> boards = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        boards.add(fleet.board("board " + i));
      }
      ManyProofs proofs = new ManyProofs(atOnce, Duration.ofSeconds(30), Thread::new);
      long before = usedAfterCollection();
      int idleThreads = Thread.activeCount();
      for (int round = 1; round <= ROUNDS; round++) {
        AtomicInteger threads = new AtomicInteger();
        long began = System.nanoTime();
        List<Outcome> outcomes =
            proofs.run(
                boards,
                o -> threads.accumulateAndGet(Thread.activeCount(), Math::max),
                () -> false);
        double seconds = (System.nanoTime() - began) / 1e9;
        outcomes.stream()
            .filter(o -> !o.passed())
            .forEach(o -> System.out.println(o.board().name() + ": " + o));
        long passed = outcomes.stream().filter(Outcome::passed).count();
        double[] took =
            outcomes.stream().mapToDouble(o -> o.took().toNanos() / 1e6).sorted().toArray();
        System.out.printf(
            "round %d: %d boards, %d at once, %d proven, %.2f s; one board median %.0f ms,"
                + " longest %.0f ms; up to %d more threads, both ends counted%n",
            round,
            count,
            atOnce,
            passed,
            seconds,
            took[took.length / 2],
            took[took.length - 1],
            threads.get() - idleThreads);
      }
      System.out.printf(
          "heap kept after collection: %.1f MB, of which the boards %.1f MB%n",
          usedAfterCollection() / 1e6, before / 1e6);
      Path status = Path.of("/proc/self/status");
      if (Files.isReadable(status)) {
        Files.readAllLines(status).stream()
            .filter(line -> line.startsWith("VmHWM"))
            .forEach(
                line ->
                    System.out.println("most memory of the process: " + line.substring(6).strip()));
      }
    }
  }

  private static long usedAfterCollection() {
    Runtime runtime = Runtime.getRuntime();
    System.gc();
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
