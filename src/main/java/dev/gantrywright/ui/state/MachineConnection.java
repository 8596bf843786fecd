package dev.gantrywright.ui.state;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.CommandTable;
import dev.gantrywright.link.Connectors;
import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.SessionTiming;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Serial;
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
  /** Common practice where the profile does not say, no published source. */
  private static final int USUAL_BAUD = 115_200;

  private static final int LOG_BYTES = 4 << 20;

  private final LineSession session;
  private final Optional<PracticeBoard> practice;
  private Watch watch;

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
    Dialect dialect = ProfileDialect.of(profile.link());
    PracticeBoard board =
        new PracticeBoard(PracticeMachine.of(profile, built), 1, System.nanoTime());
    LineSession session =
        LineSession.open(
            new LineSession.Parts(
                address.toString(),
                Connectors.of(address, board, System::nanoTime),
                settings(profile.serial()),
                dialect,
                CommandTable.standard(),
                SessionTiming.standard(),
                ByteLog.inMemory(LOG_BYTES, System.nanoTime()),
                System::nanoTime,
                Thread::new));
    boolean practising = address instanceof PortAddress.Practice;
    return new MachineConnection(session, practising ? Optional.of(board) : Optional.empty());
  }

  private static SerialSettings settings(Serial serial) {
    return new SerialSettings(
        serial.baud() == null ? USUAL_BAUD : serial.baud(),
        serial.dataBits() == null ? 8 : serial.dataBits(),
        serial.parity() == null
            ? SerialSettings.Parity.NONE
            : SerialSettings.Parity.valueOf(serial.parity().name()),
        1);
  }

  void watch(List<String> ends, double hertz, Consumer<Sample> sink) {
    watch = Watch.start(session, ends, hertz, sink, System::nanoTime, Thread::new);
  }

  LineSession session() {
    return session;
  }

  Optional<PracticeBoard> practice() {
    return practice;
  }

  @Override
  public void close() {
    if (watch != null) {
      watch.close();
    }
    session.close();
  }
}
