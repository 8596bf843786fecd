package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import dev.gantrywright.link.Connector;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.Ser2net;
import dev.gantrywright.link.Sessions;
import dev.gantrywright.link.practice.AxisMotion;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticePty;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.link.pty.Pty;
import dev.gantrywright.link.remote.Rfc2217Transport;
import dev.gantrywright.link.serial.SerialTransport;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Check.Verdict;
import dev.gantrywright.prove.Sample.Validity;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Watch, touch test and stored settings over a pseudo-terminal opened by the serial library, and
 * over RFC 2217 through the real ser2net in front of it.
 */
class RealLinesTest {
  private static final List<String> ENDS = List.of("xMin", "yMin", "zMin");

  @TempDir Path folder;

  @BeforeEach
  void ptys() {
    Tool.needThat(Pty.available(), "pseudo-terminals");
  }

  private interface Job {
    void on(LineSession session, PracticeBoard board) throws Exception;
  }

  private static void onPty(PracticeBoard board, Job job) throws Exception {
    try (PracticePty pty = PracticePty.open(board, Wire.ideal(), System::nanoTime, Thread::new);
        LineSession session = Sessions.up(s -> SerialTransport.open(pty.path(), s))) {
      job.on(session, board);
    }
  }

  private void throughSer2net(PracticeBoard board, Job job) throws Exception {
    try (PracticePty pty = PracticePty.open(board, Wire.ideal(), System::nanoTime, Thread::new);
        Ser2net server = Ser2net.serve(pty.path(), folder)) {
      Connector connector =
          s -> Rfc2217Transport.open("127.0.0.1", server.port(), s, Duration.ofSeconds(60));
      try (LineSession session = Sessions.up(connector)) {
        job.on(session, board);
      }
    }
  }

  @Test
  void watchOnAPty() throws Exception {
    onPty(PracticeMachines.board(), RealLinesTest::watch);
  }

  @Test
  void watchThroughSer2net() throws Exception {
    throughSer2net(PracticeMachines.board(), RealLinesTest::watch);
  }

  @Test
  void touchTestOnAPty() throws Exception {
    onPty(PracticeMachines.board(new Fault.Swapped("yMin", "zMin")), RealLinesTest::touchTest);
  }

  @Test
  void touchTestThroughSer2net() throws Exception {
    throughSer2net(
        PracticeMachines.board(new Fault.Swapped("yMin", "zMin")), RealLinesTest::touchTest);
  }

  @Test
  void storedSettingsOnAPty() throws Exception {
    onPty(PracticeMachines.board(stored()), RealLinesTest::storedSettings);
  }

  @Test
  void storedSettingsThroughSer2net() throws Exception {
    throughSer2net(PracticeMachines.board(stored()), RealLinesTest::storedSettings);
  }

  private static Fault stored() {
    return new Fault.Stored("x", AxisMotion.Quantity.STEPS_PER_MM, 82);
  }

  private static void watch(LineSession session, PracticeBoard board) throws Exception {
    LinkedBlockingQueue<Sample> samples = new LinkedBlockingQueue<>();
    try (Watch watch =
        Watch.start(session, ENDS, 50, samples::add, System::nanoTime, Thread::new)) {
      assertThat(watch).isNotNull();
      assertThat(next(samples, "yMin", false).states()).containsOnlyKeys(ENDS);
      board.touch("yMin", true, System.nanoTime());
      assertThat(next(samples, "yMin", true).states()).containsEntry("xMin", false);
      board.touch("yMin", false, System.nanoTime());
      assertThat(next(samples, "yMin", false).validity()).isEqualTo(Validity.VALID);
    }
  }

  private static Sample next(LinkedBlockingQueue<Sample> samples, String end, boolean wanted)
      throws InterruptedException {
    for (int i = 0; i < 2_000; i++) {
      Sample sample = samples.poll(60, TimeUnit.SECONDS);
      assertThat(sample).isNotNull();
      if (sample.validity() == Validity.VALID && sample.states().get(end) == wanted) {
        return sample;
      }
    }
    throw new AssertionError(end + " never became " + wanted);
  }

  private static void touchTest(LineSession session, PracticeBoard board) throws Exception {
    TouchTest test =
        new TouchTest(
            ENDS,
            Map.of("xMin", false, "yMin", true, "zMin", true),
            new TouchTest.Patience(150_000_000L, 60_000_000_000L));
    try (Watch watch = Watch.start(session, ENDS, 100, test::add, System::nanoTime, Thread::new)) {
      assertThat(watch).isNotNull();
      String pressed = "";
      long end = System.nanoTime() + 240_000_000_000L;
      while (!test.done() && System.nanoTime() < end) {
        String asked = test.asked().orElse("");
        if (!asked.isEmpty() && !asked.equals(pressed)) {
          pressed = asked;
          board.touch(asked, true, System.nanoTime());
          awaitSeen(test, end);
          board.touch(asked, false, System.nanoTime());
        }
        Thread.sleep(5);
      }
    }
    TouchReport report = test.report();
    assertThat(report.of("xMin").verdict()).isEqualTo(TouchVerdict.WORKS);
    assertThat(report.of("yMin").verdict()).isEqualTo(TouchVerdict.SWAPPED);
    assertThat(report.of("yMin").other()).isEqualTo("zMin");
    assertThat(report.of("zMin").other()).isEqualTo("yMin");
  }

  /** A hand holds a switch until it is told to let go, however slow the computer is. */
  private static void awaitSeen(TouchTest test, long end) throws InterruptedException {
    while (!test.pressed() && !test.done() && System.nanoTime() < end) {
      Thread.sleep(5);
    }
    Thread.sleep(50);
  }

  private static void storedSettings(LineSession session, PracticeBoard board) throws Exception {
    PrinterProfile plover =
        Printers.parse(
            """
            {"format": 1, "name": "Plover",
             "axes": {"x": {"stepsPerMm": 80, "maxSpeed": 200}, "z": {"stepsPerMm": 400}},
             "endstops": {"xMin": {"fitted": true}, "yMin": {"fitted": true}, "zMin": {"fitted": true}}}
            """);
    ProofReport before = Proof.of(plover, session, Set.of(), Map.of("version", "rookery 2.3"));
    assertThat(before.checks())
        .filteredOn(c -> c.verdict() == Verdict.FAIL)
        .extracting(Check::path)
        .containsExactly("axes.x.stepsPerMm");
    assertThat(before.linesToSend()).containsExactly("M92 X80", "M500");

    // Not armed, the offered lines do not go out; armed, they settle it.
    assertThat(session.askAndWait("M92 X80").answered()).isFalse();
    session.arm();
    for (String line : before.linesToSend()) {
      assertThat(session.askAndWait(line).answered()).isTrue();
    }
    session.disarm();
    assertThat(Proof.of(plover, session, Set.of(), Map.of()).passed()).isTrue();
    assertThat(board.faults()).hasSize(1);
  }
}
