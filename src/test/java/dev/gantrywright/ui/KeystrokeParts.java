package dev.gantrywright.ui;

import com.sun.javafx.scene.NodeHelper;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Scene;

/**
 * Where the time of a keystroke went: part by part for all of them, and for the slowest of a
 * hundred. What runs beside the toolkit's thread is told apart from what it waits for.
 */
final class KeystrokeParts {
  /** A part of a keystroke's time; those before {@link #RULES} add up to the whole. */
  enum Part {
    EDIT("the edit: value, form, header; rules and plan begin"),
    BETWEEN("styles and layout of a beat in between"),
    TAKEN("findings and plan put into the views"),
    STYLES("styles"),
    LAYOUT("layout"),
    WAIT("the rest: waiting for rules, plan, a core, the painting"),
    PROCESSOR("in all of it: the toolkit's thread has a core"),
    RULES("beside it: rules"),
    PLAN("beside it: plan and its rows"),
    GARBAGE("in all of it: garbage collection");

    private final String words;

    Part(String words) {
      this.words = words;
    }
  }

  private static final int RULES_TASK = 1;
  private static final int PLAN_TASK = 2;

  private final List<Map<Part, Double>> all = new ArrayList<>();
  private final List<Double> totals = new ArrayList<>();
  private final AtomicInteger handedOut = new AtomicInteger();
  private volatile long typed;
  private volatile double rules;
  private volatile double plan;
  private final Map<Part, Double> now = new EnumMap<>(Part.class);
  private long pulse;
  private long styled;
  private double inPulses;
  private double taken;
  private long collected;
  private long processor;

  /** Times what the window hands to its background and takes back. */
  Surroundings watched(Surroundings around) {
    ExecutorService background = new TimedExecutor(around.background(), this::timed);
    return new Surroundings(
        around.clock(),
        background,
        act -> around.view().execute(() -> take(act)),
        around.facts(),
        around.inspector(),
        around.habits(),
        around.recovery(),
        around.workshop(),
        around.records(),
        around.reading(),
        around.folders(),
        around.ports());
  }

  void watch(Scene scene) {
    scene.addPreLayoutPulseListener(
        () -> {
          pulse = System.nanoTime();
          // The pulse would do the same in the next moment, but not say how long it took.
          NodeHelper.processCSS(scene.getRoot());
          styled = System.nanoTime();
        });
    scene.addPostLayoutPulseListener(() -> inPulses += ms(System.nanoTime() - pulse));
  }

  /** The first two tasks of a keystroke are the rules and the plan. */
  private Runnable timed(Runnable task) {
    int number = handedOut.incrementAndGet();
    return () -> {
      long begun = System.nanoTime();
      task.run();
      double took = ms(System.nanoTime() - begun);
      if (number == RULES_TASK) {
        rules = took;
      } else if (number == PLAN_TASK) {
        plan = took;
      }
    };
  }

  private void take(Runnable act) {
    long begun = System.nanoTime();
    act.run();
    taken += ms(System.nanoTime() - begun);
  }

  void typed() {
    handedOut.set(0);
    now.clear();
    inPulses = 0;
    taken = 0;
    collected = collected();
    processor = processor();
    typed = System.nanoTime();
  }

  double sinceTyped() {
    return ms(System.nanoTime() - typed);
  }

  double edited() {
    double took = ms(System.nanoTime() - typed);
    now.put(Part.EDIT, took);
    return took;
  }

  /** In the pulse that showed it. */
  double shown(boolean counts) {
    long end = System.nanoTime();
    double total = ms(end - typed);
    if (counts) {
      double last = ms(end - pulse);
      now.put(Part.BETWEEN, inPulses);
      now.put(Part.TAKEN, taken);
      now.put(Part.STYLES, ms(styled - pulse));
      now.put(Part.LAYOUT, ms(end - styled));
      now.put(Part.WAIT, total - now.get(Part.EDIT) - inPulses - taken - last);
      now.put(Part.PROCESSOR, ms(processor() - processor));
      now.put(Part.RULES, rules);
      now.put(Part.PLAN, plan);
      now.put(Part.GARBAGE, (double) (collected() - collected));
      all.add(new EnumMap<>(now));
      totals.add(total);
    }
    return total;
  }

  /** Time that this thread has had a core, nanoseconds. */
  static long processor() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** How long the toolkit's thread worked for each keystroke, whoever else had the core. */
  List<Double> ownWork() {
    return all.stream().map(parts -> parts.get(Part.PROCESSOR)).toList();
  }

  static long collected() {
    return ManagementFactory.getGarbageCollectorMXBeans().stream()
        .mapToLong(GarbageCollectorMXBean::getCollectionTime)
        .sum();
  }

  private static double ms(long nanos) {
    return nanos / 1e6;
  }

  void forget() {
    all.clear();
    totals.clear();
  }

  /** Mean of each part, of all keystrokes and of the slowest of a hundred. */
  void report(String where) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparing(totals::get).reversed());
    List<Integer> slowest = order.subList(0, Math.max(1, order.size() / 100));
    List<Integer> middle =
        order.subList(order.size() * 45 / 100, Math.max(1, order.size() * 55 / 100));
    System.out.printf(
        "  %s: where the time went, ms %28s %10s%n", where, "middle 10 %", "slowest 1 %");
    System.out.println("    the slowest were numbers " + slowest + " of " + all.size());
    for (Part part : Part.values()) {
      System.out.printf(
          Locale.ROOT,
          "    %-54s %8.2f %10.2f%n",
          part.words,
          mean(middle, part),
          mean(slowest, part));
    }
  }

  private double mean(List<Integer> which, Part part) {
    return which.stream().mapToDouble(i -> all.get(i).get(part)).average().orElse(Double.NaN);
  }
}
