package dev.gantrywright.cli;

import dev.gantrywright.app.Connecting;
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
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.prove.ProfileDialect;
import java.time.Duration;
import java.util.List;
import java.util.Map;

/** A profile with an open session, for one verb; closed when the verb ends, or is interrupted. */
final class MachineLine implements AutoCloseable {
  /** Boards that restart when the port is opened take some seconds (common practice). */
  private static final Duration START_PATIENCE = Duration.ofSeconds(12);

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
      Connector connector =
          options.withControlLines(address, Connectors.of(address, board, System::nanoTime));
      LineSession session =
          Connecting.session(
              address, connector, settings(profile, options.baud, connector), dialect);
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

  private static SerialSettings settings(PrinterProfile profile, String baud, Connector connector)
      throws LinkException {
    if (baud == null) {
      return Connecting.settings(profile.serial());
    }
    if (baud.equalsIgnoreCase("auto")) {
      return Connecting.searched(profile, connector, rate -> true);
    }
    try {
      return Connecting.settings(profile.serial()).withBaud(Integer.parseInt(baud));
    } catch (NumberFormatException e) {
      throw new UsageProblem("--baud is '" + baud + "'; a whole number or 'auto' is wanted", e);
    }
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
