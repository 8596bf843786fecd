package dev.gantrywright.cli;

import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticePty;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.PracticeSetup;
import dev.gantrywright.link.practice.Press;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.PracticeMachine;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Serves the practice board to this and other programs. */
@Command(
    name = "practice",
    mixinStandardHelpOptions = true,
    description =
        "Serves the practice board until Ctrl-C: on a loopback TCP port by RFC 2217, or without"
            + " --listen on a pseudo-terminal. It is wired as the profile describes the machine.")
final class PracticeVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "PROFILE", description = "The printer profile.")
  private java.nio.file.Path profile;

  @Option(
      names = "--listen",
      paramLabel = "PORT",
      description = "Loopback TCP port; 0 takes any free one.")
  private Integer port;

  @Option(
      names = "--for",
      paramLabel = "SECONDS",
      description = "How long; without it until Ctrl-C.")
  private double seconds;

  @Option(
      names = "--fault",
      paramLabel = "FAULT",
      split = ",",
      description = "What is wrong with the machine, such as stuck:xMin:open or bounce:xMin:8.")
  private List<String> faults = new ArrayList<>();

  @Option(
      names = "--touched",
      paramLabel = "END",
      split = ",",
      description = "Axis ends that the parked machine touches.")
  private List<String> touched = new ArrayList<>();

  @Option(names = "--hand", description = "A practice hand touches one endstop after the other.")
  private boolean hand;

  @Option(
      names = "--paced",
      description = "Bytes take the time that they would at the profile's baud rate.")
  private boolean paced;

  @Option(
      names = "--built",
      paramLabel = "PATH=VALUE",
      description = "What the firmware was built with, where it differs from the profile.")
  private Map<String, String> built = new LinkedHashMap<>();

  @Mixin private TextOrJson format;

  @Override
  public Integer call() {
    if (port != null && (port < 0 || port > 65_535)) {
      throw new UsageProblem("--listen is " + port + "; a TCP port lies from 0 to 65535");
    }
    if (!(seconds >= 0)) {
      throw new UsageProblem(
          "--for must not be negative; without it the board is served until Ctrl-C");
    }
    PracticeBoard board = board();
    try {
      if (port == null) {
        try (PracticePty pty = PracticePty.open(board, wire(), System::nanoTime, Thread::new)) {
          serve(pty.path());
        }
      } else {
        try (PracticeServer server =
            PracticeServer.listen(port, board, wire(), System::nanoTime, Thread::new)) {
          serve("rfc2217://127.0.0.1:" + server.port());
        }
      }
      return ExitStatus.FINE;
    } catch (IOException e) {
      throw new DeviceProblem(
          "the practice board cannot be served"
              + (port == null ? "" : " on port " + port)
              + ": "
              + e.getMessage(),
          e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitStatus.FINE;
    }
  }

  private PracticeBoard board() {
    PrinterProfile described = Profiles.read(profile);
    try {
      List<Fault> wrong = faults.stream().map(Fault::parse).toList();
      PracticeFit fit = new PracticeFit(described);
      fit.faults(wrong);
      fit.touched(touched);
      fit.built(built);
      PracticeSetup setup =
          PracticeMachine.of(described, built).withFaults(wrong).withTouched(touched);
      if (hand) {
        List<String> ends = setup.endstops().stream().map(e -> e.name()).toList();
        setup = setup.withPresses(Press.inTurn(ends, 0.6, 0.4, 1_000));
      }
      return new PracticeBoard(setup, 1, System.nanoTime());
    } catch (IllegalArgumentException e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }

  private Wire wire() {
    Integer baud = Profiles.read(profile).serial().baud();
    return paced && baud != null ? new Wire(baud, true) : Wire.ideal();
  }

  private void serve(String address) throws InterruptedException {
    if (format.json()) {
      Printed.json(spec, Map.of("port", address));
    } else {
      Printed.out(spec).println("practice board at " + address + "  (Ctrl-C ends it)");
    }
    Printed.out(spec).flush();
    CountDownLatch never = new CountDownLatch(1);
    if (seconds > 0) {
      never.await((long) (seconds * 1000), TimeUnit.MILLISECONDS);
    } else {
      never.await();
    }
  }
}
