package dev.gantrywright.cli;

import dev.gantrywright.app.Connecting;
import dev.gantrywright.link.BaudSearch;
import dev.gantrywright.link.Connector;
import dev.gantrywright.link.Connectors;
import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.link.practice.Press;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Serial;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.prove.ProfileDialect;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** A profile with an open session, for one verb; closed when the verb ends, or is interrupted. */
final class MachineLine implements AutoCloseable {
  private static final int USUAL_BAUD = 115_200;

  /** Boards that restart when the port is opened take some seconds (common practice). */
  private static final Duration START_PATIENCE = Duration.ofSeconds(12);

  private static final Duration LISTEN = Duration.ofSeconds(3);

  private final PrinterProfile profile;
  private final LineSession session;
  private final PracticeBoard practice;
  private final Thread onExit;
  private volatile Runnable first = () -> {};

  private MachineLine(PrinterProfile profile, LineSession session, PracticeBoard practice) {
    this.profile = profile;
    this.practice = practice;
    this.session = session;
    this.onExit = new Thread(this::giveUp, "give the port up");
    Runtime.getRuntime().addShutdownHook(onExit);
  }

  /**
   * Opens the line and waits until the board answers.
   *
   * @param described the printer as its profile was read
   * @param built what the practice board's firmware was built with, where that is not the profile
   * @param presses touches that the practice hand makes
   */
  static MachineLine open(
      LineOptions options,
      PrinterProfile described,
      Map<String, String> built,
      List<Press> presses) {
    PrinterProfile profile = KeptInProfile.endstops(options, described);
    PortAddress address = options.address(profile.link());
    List<Fault> faults = options.faultsOn(address, profile);
    try {
      Dialect dialect = ProfileDialect.of(profile.link());
      PracticeSetup setup =
          PracticeMachine.of(profile, built)
              .withFaults(faults)
              .withTouched(options.touched)
              .withPresses(presses);
      PracticeBoard board = new PracticeBoard(setup, 1, System.nanoTime());
      Connector connector = Connectors.of(address, board, System::nanoTime);
      LineSession session =
          Connecting.session(
              address,
              connector,
              settings(profile.serial(), options.baud, connector, dialect),
              dialect);
      MachineLine line =
          new MachineLine(profile, session, address instanceof PortAddress.Practice ? board : null);
      line.awaitUp();
      line.keepPort(options, address);
      return line;
    } catch (IllegalArgumentException e) {
      throw new UsageProblem(options.profile + ": " + e.getMessage(), e);
    } catch (LinkException e) {
      throw new DeviceProblem(e.getMessage(), e);
    }
  }

  private static SerialSettings settings(
      Serial serial, String baud, Connector connector, Dialect dialect) throws LinkException {
    int rate = serial.baud() == null ? USUAL_BAUD : serial.baud();
    SerialSettings described = framing(serial, rate);
    if (baud == null) {
      return described;
    }
    if (baud.equalsIgnoreCase("auto")) {
      List<BaudSearch.Heard> heard =
          new BaudSearch(connector, described, dialect, System::nanoTime)
              .run(BaudSearch.usualFrom(rate), LISTEN);
      return described.withBaud(
          BaudSearch.found(heard)
              .orElseThrow(
                  () ->
                      new LinkException(
                          LinkException.Kind.SILENT,
                          "the board answers at none of the usual baud rates: look at its power, and"
                              + " at link.identityQuery")));
    }
    try {
      return described.withBaud(Integer.parseInt(baud));
    } catch (NumberFormatException e) {
      throw new UsageProblem("--baud is '" + baud + "'; a whole number or 'auto' is wanted", e);
    }
  }

  private static SerialSettings framing(Serial serial, int rate) {
    SerialSettings.Parity parity =
        serial.parity() == null
            ? SerialSettings.Parity.NONE
            : SerialSettings.Parity.valueOf(serial.parity().name());
    return new SerialSettings(rate, serial.dataBits() == null ? 8 : serial.dataBits(), parity, 1);
  }

  private void keepPort(LineOptions options, PortAddress address) {
    if (options.remember) {
      try {
        KeptInProfile.port(options, profile, address);
      } catch (RuntimeException e) {
        close();
        throw e;
      }
    }
  }

  private void awaitUp() throws LinkException {
    try {
      session.awaitUp(START_PATIENCE);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      close();
      throw new DeviceProblem("interrupted while waiting for the board", e);
    } catch (LinkException e) {
      close();
      throw e;
    }
  }

  private void giveUp() {
    first.run();
    session.close();
  }

  /**
   * What has to be done on Ctrl-C while the line still stands; the port is given up when it
   * returns.
   */
  void beforeGivingUp(Runnable act) {
    first = act;
  }

  /** Touches an endstop of the practice board; a real machine has a real hand. */
  void practiceTouch(String end, boolean touched) {
    if (practice != null) {
      practice.touch(end, touched, System.nanoTime());
    }
  }

  PrinterProfile profile() {
    return profile;
  }

  LineSession session() {
    return session;
  }

  @Override
  public void close() {
    session.close();
    try {
      Runtime.getRuntime().removeShutdownHook(onExit);
    } catch (IllegalStateException e) {
      // The program is going down and the hook is at work: nothing is left to take off.
      return;
    }
  }
}
