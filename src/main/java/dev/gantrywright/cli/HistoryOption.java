package dev.gantrywright.cli;

import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.machine.ProfileProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Whether and under whose name a run goes into a printer's history; use it as a picocli mixin. */
final class HistoryOption {
  enum Keep {
    on,
    off
  }

  /** Adds one event. */
  interface Writing {
    void to(PrinterHistory history) throws IOException, ProfileProblem;
  }

  @Option(
      names = "--history",
      paramLabel = "on|off",
      defaultValue = "${env:GANTRYWRIGHT_HISTORY:-on}",
      description =
          "Whether it goes into the printer's history, the file beside its profile (default: the"
              + " environment's GANTRYWRIGHT_HISTORY, else on).")
  Keep keep = Keep.on;

  @Option(
      names = "--signed",
      paramLabel = "NAME",
      description = "Who does it; without it the user of this computer.")
  String signed;

  /** Adds the event; a history that cannot be written is told and stops nothing. */
  void keep(CommandSpec spec, Path profile, Writing event) {
    if (keep == Keep.off || profile == null) {
      return;
    }
    try {
      event.to(history(profile));
    } catch (IOException | ProfileProblem failed) {
      Printed.err(spec).println("not kept in the history: " + failed.getMessage());
    }
  }

  /** The history beside a profile, under the name that was given. */
  PrinterHistory history(Path profile) {
    String who = signed == null ? System.getProperty("user.name", "") : signed;
    return PrinterHistory.beside(profile, who, Clock.systemUTC());
  }
}
