package dev.gantrywright.app.fleet;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Progress;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.names.CarryOver;
import dev.gantrywright.names.NameMapException;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportException;
import dev.gantrywright.patch.ExportProgress;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

/** Carries the printers of a fleet to a new release of their firmware. */
public final class FleetCarry {
  /** Older folders whose carry-over is kept; printers of one release share it. */
  private static final int KEPT = 16;

  /** The problem of a printer that was not begun because the run was ended. */
  public static final String CANCELLED = "not carried: cancelled";

  private final FirmwareFolder release;
  private final Map<String, CarryOver> known = new HashMap<>();
  private BooleanSupplier cancelled = () -> false;

  /**
   * @param release the new release's folder
   */
  public FleetCarry(FirmwareFolder release) {
    this.release = release;
  }

  /**
   * What became of one printer.
   *
   * @param fates how many of the old release's settings met each fate
   * @param lost settings that carried a profile field and are gone, one line each
   * @param lines that the new release's folder needs changed
   * @param refusals values that cannot be written, and why
   * @param out its patched folder; empty where none was asked for
   * @param problem why it was not carried; empty where it was
   */
  public record Row(
      String file,
      String printer,
      String from,
      Map<CarryOver.Fate, Integer> fates,
      List<String> lost,
      int lines,
      List<Refusal> refusals,
      Optional<Path> out,
      String problem) {
    public Row {
      fates = Map.copyOf(fates);
      lost = List.copyOf(lost);
      refusals = List.copyOf(refusals);
    }

    /** Whether every value of the profile came along. */
    public boolean whole() {
      return problem.isEmpty() && lost.isEmpty() && refusals.isEmpty();
    }
  }

  /**
   * Carries all of them, one after the other.
   *
   * @param into where patched folders and name maps go, one folder a printer; null to plan only
   * @param history the history of a profile; null to leave the exports out of it
   */
  public List<Row> run(Fleet fleet, Path into, Function<Path, PrinterHistory> history) {
    return run(fleet, into, history, done -> {}, () -> false);
  }

  /**
   * The same, telling how far it has come.
   *
   * @param progress told how many printers are done
   * @param stopped true ends the run: the folder being written is taken back, what was written
   *     before stands whole, and the rest is named as not carried
   */
  public List<Row> run(
      Fleet fleet,
      Path into,
      Function<Path, PrinterHistory> history,
      IntConsumer progress,
      BooleanSupplier stopped) {
    cancelled = stopped;
    Opening opening = new Opening();
    List<Row> rows = new ArrayList<>();
    for (Path file : fleet.files()) {
      rows.add(
          stopped.getAsBoolean()
              ? not(fleet.name(file), "", CANCELLED)
              : row(fleet, opening, file, into, history));
      progress.accept(rows.size());
    }
    return rows;
  }

  private Row row(
      Fleet fleet, Opening opening, Path file, Path into, Function<Path, PrinterHistory> history) {
    String name = fleet.name(file);
    try {
      OpenPrinter printer = opening.open(file, null, Progress.until(cancelled));
      if (printer.folder() == null || printer.names() == null) {
        return not(
            name,
            printer.title(),
            printer.problems().isEmpty()
                ? "names no firmware folder with a name map"
                : printer.problems().get(0));
      }
      return carried(name, printer, into, history);
    } catch (CancellationException ended) {
      return not(name, "", CANCELLED);
    } catch (ProfileProblem unreadable) {
      return not(name, "", unreadable.getMessage());
    } catch (ExportException | NameMapException | IOException failed) {
      return not(name, "", failed.getMessage());
    }
  }

  private Manifest written(PatchPlan plan, Path own, Path patched)
      throws ExportException, IOException {
    try {
      return Export.write(plan, patched, false, ExportProgress.none(), cancelled);
    } catch (ExportException failed) {
      takeBack(own);
      throw failed;
    }
  }

  /** The printer's own folder goes where nothing was put into it. */
  private static void takeBack(Path own) throws IOException {
    try (Stream<Path> inside = Files.list(own)) {
      if (inside.findAny().isPresent()) {
        return;
      }
    }
    Files.delete(own);
  }

  private static Row not(String file, String printer, String problem) {
    return new Row(file, printer, "", Map.of(), List.of(), 0, List.of(), Optional.empty(), problem);
  }

  private Row carried(
      String name, OpenPrinter printer, Path into, Function<Path, PrinterHistory> history)
      throws ExportException, NameMapException, IOException {
    CarryOver over = over(printer);
    PatchPlan plan = PatchPlan.of(printer.profile(), over.map(), release);
    Map<CarryOver.Fate, Integer> fates = new HashMap<>();
    over.lines().forEach(line -> fates.merge(line.fate(), 1, Integer::sum));
    List<String> lost =
        over.lines().stream()
            .filter(line -> line.fate() == CarryOver.Fate.GONE && !line.fields().isEmpty())
            .map(CarryOver.Line::toString)
            .toList();
    Optional<Path> out = Optional.empty();
    if (into != null) {
      Path own = into.resolve(Fleet.stem(name));
      Path patched = own.resolve(folderName(release));
      Files.createDirectories(own);
      Manifest manifest = written(plan, own, patched);
      NameMapJson.save(over.map(), own.resolve(folderName(release) + ".names.json"));
      if (history != null) {
        history.apply(printer.file()).exported(printer, plan, manifest, patched);
      }
      out = Optional.of(patched);
    }
    return new Row(
        name,
        printer.title(),
        folderName(printer.folder()),
        fates,
        lost,
        plan.lines().size(),
        plan.refusals(),
        out,
        "");
  }

  private static String folderName(FirmwareFolder folder) {
    return folder.root().toAbsolutePath().normalize().getFileName().toString();
  }

  /** Printers that share folder and name map share the comparison of releases. */
  private CarryOver over(OpenPrinter printer) {
    String key = printer.folder().root() + "\n" + printer.profile().build().names();
    if (known.size() >= KEPT && !known.containsKey(key)) {
      known.clear();
    }
    return known.computeIfAbsent(
        key, k -> CarryOver.of(printer.folder(), printer.names(), release));
  }
}
