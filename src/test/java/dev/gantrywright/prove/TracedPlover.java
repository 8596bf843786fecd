package dev.gantrywright.prove;

import dev.gantrywright.link.DialectFile;
import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.prove.Sample.Validity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The practice machine polled in made-up time, with a hand that does as it is asked. */
final class TracedPlover {
  static final long MS = 1_000_000L;
  private static final List<String> ENDS = List.of("xMin", "yMin", "zMin");

  private final EndstopReader reader = new EndstopReader(DialectFile.standard());
  private final EndstopNames names = new EndstopNames(ENDS, Map.of());
  private final PracticeBoard board;
  private long now;

  TracedPlover(PracticeSetup setup, String... faults) {
    List<Fault> parsed = Stream.of(faults).map(Fault::parse).toList();
    board = new PracticeBoard(setup.withFaults(parsed), 7, 0);
  }

  static TracedPlover with(String... faults) {
    return new TracedPlover(PracticeMachines.plover(), faults);
  }

  Sample sample(long stepMs) {
    now += stepMs * MS;
    Map<String, Boolean> states = new LinkedHashMap<>();
    for (EndstopReading r : reader.read(board.obey("M119", now))) {
      states.put(names.match(r.name()).orElseThrow().end(), r.triggered());
    }
    return new Sample(now, 0, Validity.VALID, states);
  }

  /** Presses whatever is asked for, for 600 ms, 300 ms after it was asked. */
  TouchReport touchTest(Map<String, Boolean> inverted) {
    TouchTest test = new TouchTest(ENDS, inverted, new TouchTest.Patience(300 * MS, 3_000 * MS));
    String pressing = "";
    String done = "";
    boolean down = false;
    long at = 0;
    for (int i = 0; i < 20_000 && !test.done(); i++) {
      String asked = test.asked().orElse("");
      if (pressing.isEmpty() && !asked.isEmpty() && !asked.equals(done)) {
        pressing = asked;
        at = now + 300 * MS;
      }
      if (!pressing.isEmpty() && now >= at + 600 * MS) {
        board.touch(pressing, false, now);
        done = pressing;
        pressing = "";
        down = false;
      } else if (!pressing.isEmpty() && now >= at && !down) {
        board.touch(pressing, true, now);
        down = true;
      }
      test.add(sample(2));
    }
    return test.report();
  }
}
