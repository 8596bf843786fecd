package dev.gantrywright.ui.state;

import dev.gantrywright.app.Connecting;
import dev.gantrywright.link.BaudSearch;
import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.Connector;
import dev.gantrywright.link.Connectors;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.prove.ProfileDialect;
import dev.gantrywright.prove.Sample;
import dev.gantrywright.prove.Watch;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * One open line with its watch, whose log outlives it; made and closed off the view's thread, since
 * both may wait.
 */
final class MachineConnection implements AutoCloseable {
  private final LineSession session;
  private final int baud;
  private final Optional<PracticeBoard> practice;
  private Watch watch;
  private List<String> ends = List.of();
  private Consumer<Sample> sink = sample -> {};
  private boolean closed;

  private MachineConnection(LineSession session, int baud, Optional<PracticeBoard> practice) {
    this.session = session;
    this.baud = baud;
    this.practice = practice;
  }

  /**
   * Opens the line.
   *
   * @param built what the practice board's firmware was built with, where that is not the profile
   * @param search told of each baud rate while the right one is looked for, false to give up; null
   *     to take the profile's
   * @throws LinkException when the line cannot be opened at all
   * @throws IllegalArgumentException when the profile's link section is unusable
   */
  static MachineConnection open(
      PrinterProfile profile,
      PortAddress address,
      Map<String, String> built,
      BaudSearch.Going search)
      throws LinkException {
    PracticeBoard board =
        new PracticeBoard(PracticeMachine.of(profile, built), 1, System.nanoTime());
    Connector connector = Connectors.of(address, board, System::nanoTime);
    SerialSettings settings =
        search == null
            ? Connecting.settings(profile.serial())
            : Connecting.searched(profile, connector, search);
    ByteLog log = Connecting.longLog();
    LineSession session;
    try {
      session =
          Connecting.session(address, connector, settings, ProfileDialect.of(profile.link()), log);
    } catch (LinkException | RuntimeException failed) {
      close(log);
      throw failed;
    }
    boolean practising = address instanceof PortAddress.Practice;
    return new MachineConnection(
        session, settings.baud(), practising ? Optional.of(board) : Optional.empty());
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

  /** At which the line was opened, bit/s. */
  int baud() {
    return baud;
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

  /** Closes the line and its log, where nobody has seen either. */
  void discard() {
    close();
    close(session.log());
  }

  /**
   * The file of a log that nobody looks at is of no use, and goes with the program at the latest.
   */
  private static void close(ByteLog log) {
    try {
      log.close();
    } catch (IOException e) {
      return;
    }
  }
}
