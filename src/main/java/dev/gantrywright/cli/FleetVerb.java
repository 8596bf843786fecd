package dev.gantrywright.cli;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.ManyProofs;
import dev.gantrywright.app.fleet.BoardChange;
import dev.gantrywright.app.fleet.Fleet;
import dev.gantrywright.app.fleet.FleetCarry;
import dev.gantrywright.app.fleet.FleetMatrix;
import dev.gantrywright.app.fleet.PortList;
import dev.gantrywright.app.fleet.ReleaseOf;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.header.Progress;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.ProfileProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb fleet: a folder of printers looked at, carried on and proven together. */
@Command(
    name = "fleet",
    mixinStandardHelpOptions = true,
    description =
        "Takes every *.printer.json below a folder as a fleet. Without an option it checks all and"
            + " prints a matrix of printers and findings.",
    footer = {
      "",
      "  fleet DIR                              printers against findings",
      "  fleet DIR --release NAME               which printers run that release",
      "  fleet DIR --board SHEET                which printers use that board sheet",
      "  fleet DIR --board SHEET --instead NEW  what a changed sheet brings and settles",
      "  fleet DIR --carry-to NEWDIR            what a new release asks of each printer",
      "  fleet DIR --carry-to NEWDIR --out OUT  the same, and writes every patched folder",
      "  fleet DIR --prove PORTS                proves many machines at once",
      "",
      "PORTS is a text file; on each line a profile, relative to DIR, and a port.",
      "",
      "Exit status 0: fine; 1: an error somewhere, a value that does not come along, "
          + "or a machine that differs; 2: a profile, sheet or list that cannot be read; 3: "
          + "a machine that could not be asked, or a folder that could not be written."
    })
final class FleetVerb implements Callable<Integer> {
  private static final int USUAL_LONGEST = 30;

  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;
  @Mixin private HistoryOption history;

  @Parameters(index = "0", paramLabel = "DIR", description = "The folder of profiles.")
  private Path folder;

  @ArgGroup private Act act = new Act();

  @Option(
      names = "--instead",
      paramLabel = "NEW",
      description = "With --board: the sheet as it would be.")
  private Path instead;

  @Option(
      names = "--out",
      paramLabel = "OUT",
      description =
          "With --carry-to: write each printer's patched folder and name map in a folder of its own"
              + " here.")
  private Path out;

  @Option(
      names = "--at-once",
      paramLabel = "N",
      description =
          "With --prove: most machines at once (default " + ManyProofs.USUAL_AT_ONCE + ").")
  private Integer atOnce;

  @Option(
      names = "--longest",
      paramLabel = "SECONDS",
      description = "With --prove: longest time for one machine (default " + USUAL_LONGEST + ").")
  private Integer longest;

  /** One at a time. */
  static final class Act {
    @Option(names = "--release", paramLabel = "NAME", description = "A release's folder name.")
    private String release;

    @Option(names = "--board", paramLabel = "SHEET", description = "A board sheet.")
    private Path board;

    @Option(
        names = "--carry-to",
        paramLabel = "NEWDIR",
        description = "The new release's firmware folder.")
    private Path carryTo;

    @Option(names = "--prove", paramLabel = "PORTS", description = "Which machine is where.")
    private Path prove;
  }

  @Override
  public Integer call() {
    alone(instead != null && act.board == null, "--instead", "--board SHEET");
    alone(out != null && act.carryTo == null, "--out", "--carry-to NEWDIR");
    alone(atOnce != null && act.prove == null, "--at-once", "--prove PORTS");
    alone(longest != null && act.prove == null, "--longest", "--prove PORTS");
    Fleet fleet = fleet();
    FleetPrinter printer = new FleetPrinter(spec, format.json());
    try {
      if (act.release != null) {
        List<ReleaseOf> rows =
            fleet.files().stream().map(file -> ReleaseOf.of(fleet, file)).toList();
        return printer.releases(act.release, rows);
      }
      if (act.board != null) {
        return printer.board(act.board, instead, board(fleet));
      }
      if (act.carryTo != null) {
        try (CtrlC stop = new CtrlC()) {
          List<FleetCarry.Row> rows = carry(fleet, stop);
          int status = printer.carried(act.carryTo, rows);
          Printed.out(spec).flush();
          cut(stop, rows);
          return status;
        }
      }
      return act.prove != null
          ? prove()
          : printer.matrix(FleetMatrix.of(fleet, Checking.shipped()));
    } catch (IOException failed) {
      throw new DeviceProblem(failed.getMessage(), failed);
    }
  }

  private static void alone(boolean wrong, String option, String with) {
    if (wrong) {
      throw new UsageProblem(option + " goes with " + with);
    }
  }

  private Fleet fleet() {
    FolderInput.need(folder, "the folder of profiles");
    try {
      Fleet fleet = Fleet.in(folder);
      if (fleet.files().isEmpty()) {
        throw new UsageProblem(folder + ": holds no *.printer.json");
      }
      return fleet;
    } catch (IOException unreadable) {
      throw new UsageProblem(
          folder + ": cannot be read (" + IoReason.of(unreadable) + ")", unreadable);
    }
  }

  private List<BoardChange.Row> board(Fleet fleet) throws IOException {
    try {
      BoardStore.read(act.board);
      BoardSheet changed = instead == null ? null : BoardStore.read(instead);
      return BoardChange.of(fleet, Checking.shipped(), act.board, changed);
    } catch (ProfileProblem unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    }
  }

  private void cut(CtrlC stop, List<FleetCarry.Row> rows) {
    if (stop.pressed()) {
      long done = rows.stream().filter(row -> !row.problem().equals(FleetCarry.CANCELLED)).count();
      Printed.err(spec)
          .println("stopped after " + done + " of " + Counted.of(rows.size(), "printer"));
    }
  }

  private FirmwareFolder release(CtrlC stop) {
    try {
      Progress ended = Progress.until(stop::pressed);
      return FolderInput.read(spec, act.carryTo, List.of(), ended);
    } catch (CancellationException ended) {
      stop.tell(Printed.err(spec), new CancellationException("stopped; no printer was carried"));
      throw ended;
    }
  }

  private List<FleetCarry.Row> carry(Fleet fleet, CtrlC stop) {
    FleetCarry carry = new FleetCarry(release(stop));
    ProgressLine progress =
        new ProgressLine(Printed.err(spec), fleet.files().size(), "printers carried:");
    try {
      return carry.run(
          fleet,
          out,
          history.keep == HistoryOption.Keep.on ? history::history : null,
          progress::at,
          stop::pressed);
    } finally {
      progress.clear();
    }
  }

  private int prove() {
    int most = atOnce == null ? ManyProofs.USUAL_AT_ONCE : atOnce;
    int seconds = longest == null ? USUAL_LONGEST : longest;
    if (most < 1 || seconds < 1) {
      throw new UsageProblem("--at-once and --longest take whole numbers from 1");
    }
    try {
      return new FleetProof(spec, format.json(), history)
          .run(
              PortList.read(act.prove, folder),
              new ManyProofs(most, Duration.ofSeconds(seconds), Thread::new));
    } catch (PortList.NoList wrong) {
      throw new UsageProblem(wrong.getMessage(), wrong);
    }
  }
}
