package dev.gantrywright.app.record;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.LoadJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.TravelStudy;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import dev.gantrywright.prove.TouchReport;
import dev.gantrywright.prove.Trace;
import dev.gantrywright.prove.TravelRuns;
import dev.gantrywright.record.Draft;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.HistoryFile;
import dev.gantrywright.record.ProfileState;
import dev.gantrywright.record.Timeline;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.node.ObjectNode;

/**
 * One printer's history, to be written and read. Every method that adds an event returns when it is
 * on the disk, or throws with one line that says why not; nothing else is changed then.
 */
public final class PrinterHistory {
  private final HistoryFile file;
  private final String by;
  private final Clock clock;

  private PrinterHistory(HistoryFile file, String by, Clock clock) {
    this.file = file;
    this.by = by;
    this.clock = clock;
  }

  /**
   * The history beside a profile; it need not be there yet.
   *
   * @param by who works on the printer
   */
  public static PrinterHistory beside(Path profile, String by, Clock clock) {
    return new PrinterHistory(HistoryFile.beside(profile), by, clock);
  }

  /** The same under the name of the user who runs the program. */
  public static PrinterHistory beside(Path profile) {
    return beside(profile, System.getProperty("user.name", ""), Clock.systemUTC());
  }

  public HistoryFile file() {
    return file;
  }

  /** Everything that was kept. */
  public Timeline timeline() throws IOException {
    return file.read();
  }

  /** A patched folder was written. */
  public Event exported(OpenPrinter printer, PatchPlan plan, Manifest manifest, Path patched)
      throws IOException {
    return add(
        EventKind.EXPORT,
        printer.profile(),
        ExportFacts.of(printer, plan, manifest, patched.toAbsolutePath().normalize()));
  }

  /**
   * A build ended, well or not.
   *
   * @param command as it ran, in one line
   */
  public Event built(PrinterProfile profile, BuildJob.Done done, String command)
      throws IOException {
    return add(EventKind.BUILD, profile, BuildFacts.of(done, command));
  }

  /** An image was put on a card and read back. */
  public Event loaded(PrinterProfile profile, LoadJob.Request request, LoadJob.Done done)
      throws IOException {
    return add(EventKind.LOAD, profile, LoadFacts.copied(request, done));
  }

  /** A command of the user's own loaded an image, as far as it said. */
  public Event loadedBy(
      PrinterProfile profile, LoadJob.Request request, String sha256, String command)
      throws IOException {
    return add(EventKind.LOAD, profile, LoadFacts.commanded(request, sha256, command));
  }

  /** A drive that takes files while they are written took an image. */
  public Event taken(PrinterProfile profile, LoadJob.Request request, String sha256, String drive)
      throws IOException {
    return add(EventKind.LOAD, profile, LoadFacts.taken(request, sha256, drive));
  }

  /**
   * A machine was compared with its profile.
   *
   * @param touched axis ends that the parked machine touched meanwhile
   */
  public Event proved(PrinterProfile profile, ProofReport report, Set<String> touched)
      throws IOException {
    return add(EventKind.PROOF, profile, ProofFacts.of(report, touched));
  }

  /**
   * The endstops were pressed one after the other.
   *
   * @param port the line that was used, as {@link ProofReport#port} gives it
   * @param trace the states meanwhile, for the picture; empty where none was kept
   */
  public Event touchTested(
      PrinterProfile profile, String port, TouchReport report, Optional<Trace> trace)
      throws IOException {
    return add(EventKind.TOUCH_TEST, profile, TouchFacts.of(port, report, trace));
  }

  /**
   * An axis was measured.
   *
   * @param current steps/mm in force while it was
   */
  public Event calibrated(
      PrinterProfile profile, TravelRuns runs, double current, TravelStudy study)
      throws IOException {
    return add(EventKind.CALIBRATION, profile, CalibrationFacts.of(runs, current, study));
  }

  /**
   * A heater was heated up at a set power.
   *
   * @param port the line that was used, as {@link ProofReport#port} gives it
   * @param stopped whether somebody ended it
   * @param readings the file that keeps them, beside the profile
   */
  public Event heatedUp(
      PrinterProfile profile,
      String port,
      ThermalRun run,
      StepResponse response,
      boolean stopped,
      Path readings)
      throws IOException {
    return add(EventKind.HEAT_UP, profile, HeatUpFacts.of(port, run, response, stopped, readings));
  }

  /** A remark of the user's. */
  public Event noted(PrinterProfile profile, String text) throws IOException {
    ObjectNode facts = Facts.object();
    facts.put("text", text);
    return add(EventKind.NOTE, profile, facts);
  }

  /**
   * The profile was brought back.
   *
   * @param profile as it now is
   * @param to the event whose state that is
   */
  public Event returned(PrinterProfile profile, Event to) throws IOException {
    ObjectNode facts = Facts.object();
    facts.put("to", to.id());
    facts.put("of", to.time().toString());
    return add(EventKind.RETURN, profile, facts);
  }

  private Event add(EventKind kind, PrinterProfile profile, ObjectNode facts) throws IOException {
    return file.append(new Draft(clock.instant(), kind, by, ProfileState.of(profile), facts));
  }
}
