package dev.gantrywright.app;

import dev.gantrywright.link.BaudSearch;
import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.CommandTable;
import dev.gantrywright.link.Connector;
import dev.gantrywright.link.Connectors;
import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.SessionTiming;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Serial;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.prove.ProfileDialect;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** Opens the line to a printer's machine, or to the practice board that stands for it. */
public final class Connecting {
  /** Used where the profile names no rate; common practice, no published source. */
  public static final int USUAL_BAUD = 115_200;

  /** How long a board may take to answer at one rate; it may restart when the port is opened. */
  private static final Duration LISTEN = Duration.ofSeconds(3);

  private static final int RING_BYTES = 4 << 20;

  /** Of a log that is in a file too: what a list of its newest lines shows. */
  private static final int SHOWN_BYTES = 1 << 20;

  private static final int SHORT_RING_BYTES = 1 << 16;

  private Connecting() {}

  /**
   * Opens a session; it connects in the background and is closed by the caller.
   *
   * @param practice the practice board to stand for the machine where the address asks for it
   */
  public static LineSession open(
      PrinterProfile profile, PortAddress address, SerialSettings settings, PracticeSetup practice)
      throws LinkException {
    PracticeBoard board = new PracticeBoard(practice, 1, System.nanoTime());
    return session(
        address,
        Connectors.of(address, board, System::nanoTime),
        settings,
        ProfileDialect.of(profile.link()));
  }

  /**
   * Opens a session that is used once: with the profile's own settings, a practice board that is
   * wired and built as the profile says, and a short log.
   *
   * @throws IllegalArgumentException when the profile's link section is unusable
   */
  public static LineSession forOneProof(PrinterProfile profile, PortAddress address)
      throws LinkException {
    PracticeBoard board =
        address instanceof PortAddress.Practice
            ? new PracticeBoard(PracticeMachine.of(profile), 1, System.nanoTime())
            : null;
    return session(
        address,
        Connectors.of(address, board, System::nanoTime),
        settings(profile.serial()),
        ProfileDialect.of(profile.link()),
        ByteLog.inMemory(SHORT_RING_BYTES, System.nanoTime()));
  }

  /** Opens a session over a connector that the caller has made. */
  public static LineSession session(
      PortAddress address, Connector connector, SerialSettings settings, Dialect dialect)
      throws LinkException {
    return session(
        address, connector, settings, dialect, ByteLog.inMemory(RING_BYTES, System.nanoTime()));
  }

  /** A log of every byte, for a line that somebody looks back on. */
  public static ByteLog longLog() {
    long start = System.nanoTime();
    Path folder = Path.of(System.getProperty("java.io.tmpdir"));
    try {
      return ByteLog.in(folder, SHOWN_BYTES, start);
    } catch (IOException e) {
      return ByteLog.inMemory(
          RING_BYTES, start, "no file for the log in " + folder + ": only the newest is kept");
    }
  }

  /**
   * The same with a log of the caller's, who closes it.
   *
   * @param log receives every byte
   */
  public static LineSession session(
      PortAddress address,
      Connector connector,
      SerialSettings settings,
      Dialect dialect,
      ByteLog log)
      throws LinkException {
    return LineSession.open(
        new LineSession.Parts(
            address.toString(),
            connector,
            settings,
            dialect,
            CommandTable.standard(),
            SessionTiming.standard(),
            log,
            System::nanoTime,
            Thread::new));
  }

  /**
   * The profile's settings with the baud rate at which the board answers; only questions are sent.
   *
   * @param going told of each rate; false ends the search
   * @throws LinkException SILENT when it answers at none
   */
  public static SerialSettings searched(
      PrinterProfile profile, Connector connector, BaudSearch.Going going) throws LinkException {
    SerialSettings described = settings(profile.serial());
    List<BaudSearch.Heard> heard =
        new BaudSearch(connector, described, ProfileDialect.of(profile.link()), System::nanoTime)
            .run(BaudSearch.usualFrom(described.baud()), LISTEN, going);
    return described.withBaud(
        BaudSearch.found(heard)
            .orElseThrow(
                () ->
                    new LinkException(
                        LinkException.Kind.SILENT,
                        "the board answers at none of the usual baud rates: look at its power, and"
                            + " at link.identityQuery")));
  }

  /**
   * The profile's serial settings; eight bits, no parity, one stop bit where it leaves them open.
   */
  public static SerialSettings settings(Serial serial) {
    SerialSettings.Parity parity =
        serial.parity() == null
            ? SerialSettings.Parity.NONE
            : SerialSettings.Parity.valueOf(serial.parity().name());
    return new SerialSettings(
        serial.baud() == null ? USUAL_BAUD : serial.baud(),
        serial.dataBits() == null ? 8 : serial.dataBits(),
        parity,
        1);
  }
}
