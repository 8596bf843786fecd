package dev.gantrywright.ui.state;

import dev.gantrywright.app.Connecting;
import dev.gantrywright.link.Connectors;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.prove.ProfileDialect;
import dev.gantrywright.prove.Sample;
import dev.gantrywright.prove.Watch;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** One open line with its watch; made and closed off the view's thread, since both may wait. */
final class MachineConnection implements AutoCloseable {
  private final LineSession session;
  private final Optional<PracticeBoard> practice;
  private Watch watch;
  private List<String> ends = List.of();
  private Consumer<Sample> sink = sample -> {};
  private boolean closed;

  private MachineConnection(LineSession session, Optional<PracticeBoard> practice) {
    this.session = session;
    this.practice = practice;
  }

  /**
   * Opens the line.
   *
   * @param built what the practice board's firmware was built with, where that is not the profile
   * @throws LinkException when the line cannot be opened at all
   * @throws IllegalArgumentException when the profile's link section is unusable
   */
  static MachineConnection open(
      PrinterProfile profile, PortAddress address, Map<String, String> built) throws LinkException {
    PracticeBoard board =
        new PracticeBoard(PracticeMachine.of(profile, built), 1, System.nanoTime());
    LineSession session =
        Connecting.session(
            address,
            Connectors.of(address, board, System::nanoTime),
            Connecting.settings(profile.serial()),
            ProfileDialect.of(profile.link()));
    boolean practising = address instanceof PortAddress.Practice;
    return new MachineConnection(session, practising ? Optional.of(board) : Optional.empty());
  }

  synchronized void watch(List<String> ends, double hertz, Consumer<Sample> sink) {
    this.ends = ends;
    this.sink = sink;
    watch = Watch.start(session, ends, hertz, sink, System::nanoTime, Thread::new);
  }

  /** Asks at another rate from now on. Waits for the question that is under way. */
  synchronized void pace(double hertz) {
    if (watch != null && !closed) {
      watch.close();
      watch(ends, hertz, sink);
    }
  }

  LineSession session() {
    return session;
  }

  Optional<PracticeBoard> practice() {
    return practice;
  }

  @Override
  public synchronized void close() {
    closed = true;
    if (watch != null) {
      watch.close();
    }
    session.close();
  }
}
