package dev.gantrywright.ui.state;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.CommandKind;
import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.prove.Sample;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The line to the machine as the window sees it. Lives on the view's thread; samples and state
 * changes come over from the line's threads, never more than one of each waiting.
 */
public final class LinkDesk implements AutoCloseable {
  private final LineOpening opening;
  private final LineInHand line;
  private final SeenEndstops endstops;
  private final LineProof proof;
  private final LineTalk talk;
  private final Cell<Set<String>> touched = new Cell<>(Set.of());
  private final PracticeFaults faults = new PracticeFaults(System::nanoTime);
  private Optional<ByteLog> log = Optional.empty();

  public LinkDesk(Executor background, Executor view) {
    opening = new LineOpening(background, view);
    line = new LineInHand(background, view, opening, dependents());
    endstops = new SeenEndstops(view);
    proof = new LineProof(background, view);
    talk = new LineTalk(this::session, view);
  }

  public Cell<LinkStatus> status() {
    return line.status();
  }

  public Cell<Live> live() {
    return endstops.live();
  }

  /**
   * The endstops as they are known at this moment, by axis end: none known while the line is lost
   * or the machine does not answer, whatever was seen last.
   */
  public Map<String, ContactState> seen() {
    return endstops.known(status().get().kind() == LinkStatus.Kind.UP);
  }

  /** Axis ends that are touched now: by the practice hand, or as the user says. */
  public Cell<Set<String>> touched() {
    return touched;
  }

  public Cell<Optional<ProofReport>> proof() {
    return proof.report();
  }

  public Cell<Boolean> proving() {
    return proof.running();
  }

  public Cell<Boolean> armed() {
    return talk.armed();
  }

  /** The last thing worth saying about the line, such as a refusal or the answer to a stop. */
  public Cell<String> said() {
    return talk.said();
  }

  public Trace trace() {
    return endstops.trace();
  }

  /** The profile that the practice board's firmware was built from; null while none is up. */
  public PrinterProfile built() {
    return line.built();
  }

  /** Opens a line and watches the endstops. Returns at once; the status tells how it goes. */
  public void connect(PrinterProfile profile, PortAddress address, double hertz) {
    connect(profile, address, hertz, Map::of);
  }

  /**
   * The same with a practice board whose firmware was built from other values than the profile's.
   *
   * @param firmware field path to value, asked off the view's thread
   */
  public void connect(
      PrinterProfile profile,
      PortAddress address,
      double hertz,
      Supplier<Map<String, String>> firmware) {
    connect(new LineRequest(profile, address, hertz, firmware, false));
  }

  /** The same at the baud rate at which the board answers, found by trying the usual ones. */
  public void connectAtAnyBaud(PrinterProfile profile, PortAddress address, double hertz) {
    connect(new LineRequest(profile, address, hertz, Map::of, true));
  }

  private void connect(LineRequest request) {
    disconnect();
    line.open(request);
  }

  /** Opens the same line again, with what the profile says now. */
  public void reconnect(PrinterProfile profile) {
    line.again(profile).ifPresent(this::connect);
  }

  /** USB identity of the port that was opened last, as the profile keeps it. */
  public Cell<Optional<String>> usbPort() {
    return line.usbPort();
  }

  /** The baud rate that was found by trying; empty where the profile's was taken. */
  public Cell<Optional<Integer>> foundBaud() {
    return line.foundBaud();
  }

  /**
   * Watches at another rate from now on, also after the line was opened again.
   *
   * @param hertz queries a second; 0 for as many as the line takes
   */
  public void watchAt(double hertz) {
    line.watchAt(hertz);
  }

  /** Asks for the endstops so often from now on; 0 for the rate at which the line was opened. */
  public void pace(double hertz) {
    line.pace(hertz);
  }

  /**
   * What has to be over before a line is given up, such as a heater that is on: run off the view's
   * thread, and waited for.
   */
  public void beforeClosing(Runnable end) {
    line.beforeClosing(end);
  }

  /** From now on this receives every sample too, on the watch's thread. */
  public void tap(Consumer<Sample> receiver) {
    endstops.tap(receiver);
  }

  private LineInHand.Dependents dependents() {
    return new LineInHand.Dependents() {
      @Override
      public Consumer<Sample> opened(
          MachineConnection opened, LineRequest request, BooleanSupplier current) {
        log(Optional.of(opened.session().log()));
        faults.board(opened.practice());
        return endstops.begin(Endstops.fitted(request.profile()), current);
      }

      @Override
      public void restarted(String banner) {
        said().set(Texts.of("link.restarted", banner));
      }

      @Override
      public void down() {
        armed().set(false);
      }
    };
  }

  /** Gives the line up. Returns at once. */
  public void disconnect() {
    line.giveUp();
    endstops.forget();
    touched.set(Set.of());
    armed().set(false);
    faults.board(Optional.empty());
    proof.forget();
    line.gone();
  }

  /** Touches or lets go of an endstop: the practice hand does it, or the user says so. */
  public void touch(String end, boolean on) {
    Set<String> next = new TreeSet<>(touched.get());
    boolean changed = on ? next.add(end) : next.remove(end);
    if (changed) {
      touched.set(Set.copyOf(next));
      line.connection()
          .flatMap(MachineConnection::practice)
          .ifPresent(board -> board.touch(end, on, System.nanoTime()));
    }
  }

  /** What is wrong with the practice board. */
  public PracticeFaults faults() {
    return faults;
  }

  /** Stops the machine, ahead of everything that waits. */
  public void stop() {
    talk.stop();
  }

  /** Lets moving, heating and writing commands through until the line is lost or disarmed. */
  public void arm(boolean on) {
    talk.arm(on);
  }

  /** What a command would do. */
  public Optional<CommandKind> kindOf(String command) {
    return talk.kindOf(command);
  }

  /**
   * Sends a command; the answer, or why it was refused, appears in the log and in {@link #said}.
   */
  public void ask(String command) {
    talk.ask(command);
  }

  /**
   * Sends commands one after the other, each when the one before was obeyed; the first that is not
   * ends it.
   *
   * @param done told, on the view's thread, what went wrong; empty when all were obeyed
   */
  public void sendAll(List<String> commands, Consumer<String> done) {
    talk.sendAll(commands, done);
  }

  /** The open line, for a job of its own off the view's thread; empty while none is. */
  public Optional<LineSession> session() {
    return line.session();
  }

  /** What the firmware calls its endstops and its settings; empty while nothing is connected. */
  public Optional<Dialect> dialect() {
    return session().map(LineSession::dialect);
  }

  /** Compares endstops, stored settings and identity with the profile. */
  public void prove(PrinterProfile profile) {
    prove(profile, null);
  }

  /**
   * The same, with what the history beside the profile says of the firmware.
   *
   * @param file the profile's; null where it is in none
   */
  public void prove(PrinterProfile profile, Path file) {
    session().ifPresent(session -> proof.run(profile, file, session, touched.get(), said()::set));
  }

  /** The log of the open line, or of the one that was open last. */
  public Optional<ByteLog> log() {
    return log;
  }

  /** How many entries the log has had. */
  public long logged() {
    return log.map(ByteLog::entries).orElse(0L);
  }

  /** The query that the watch asks, for the strip. */
  public String query() {
    return dialect().map(Dialect::endstopQuery).orElse("");
  }

  private void log(Optional<ByteLog> next) {
    log.ifPresent(opening::giveUp);
    log = next;
  }

  @Override
  public void close() {
    disconnect();
    log(Optional.empty());
  }
}
