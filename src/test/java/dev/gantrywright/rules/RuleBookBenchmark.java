package dev.gantrywright.rules;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.rules.book.StandardBook;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;

/**
 * Times the rule book on a demo printer with its folder and name map open: the whole book, and what
 * an edit of one field re-runs. A program, not a test: {@code docs/benchmarks/rules.sh} runs it.
 */
public final class RuleBookBenchmark {
  private static final int WARM_UP = 3_000;
  private static final int RUNS = 3_000;

  private RuleBookBenchmark() {}

  public static void main(String[] args) throws Exception {
    Path demo = Path.of("demo-profiles");
    PrinterProfile profile = ProfileStore.read(demo.resolve("sandpiper.printer.json"));
    CheckInput bare =
        new CheckInput(
            profile,
            BoardStore.read(demo.resolve(profile.board().sheet())),
            null,
            null,
            Catalog.shipped());
    CheckInput whole =
        new CheckInput(
            profile,
            bare.sheet(),
            FirmwareFolder.read(demo.resolve(profile.build().folder())),
            NameMapJson.read(demo.resolve(profile.build().names())),
            bare.catalog());
    RuleBook book = StandardBook.open();
    System.out.println("rules: " + book.rules().size());
    time("whole book, profile and board sheet", run -> book.run(bare));
    time("whole book, with firmware folder and name map", run -> book.run(whole));
    for (String path :
        List.of("axes.x.stepsPerMm", "endstops.zMin.inverted", "serial.baud", "supply.volts")) {
      edit(book, whole, path);
    }
  }

  private static void edit(RuleBook book, CheckInput input, String path) throws Exception {
    Object value = ProfileValues.get(input.profile(), path).orElseThrow();
    CheckInput same = input.with(ProfileValues.with(input.profile(), path, value));
    Checked before = book.run(input);
    time("edit of " + path, run -> book.rerun(before, same, Set.of(path)));
  }

  private static void time(String what, IntConsumer act) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (int run = 0; run < WARM_UP; run++) {
      act.accept(run);
    }
    long cpu = threads.getCurrentThreadCpuTime();
    long[] nanos = new long[RUNS];
    for (int run = 0; run < RUNS; run++) {
      long start = System.nanoTime();
      act.accept(run);
      nanos[run] = System.nanoTime() - start;
    }
    double processor = (threads.getCurrentThreadCpuTime() - cpu) / 1e6 / RUNS;
    Arrays.sort(nanos);
    System.out.printf(
        "%-48s median %.3f ms, 95th percentile %.3f ms, processor time %.3f ms%n",
        what, nanos[RUNS / 2] / 1e6, nanos[RUNS * 95 / 100] / 1e6, processor);
  }
}
