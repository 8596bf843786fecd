package dev.gantrywright.cli;

import dev.gantrywright.app.HeatCeiling;
import dev.gantrywright.app.StepRecord;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.StepResponse;
import dev.gantrywright.prove.ThermalRun;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb heat: records a heater's step response on a line that is armed for this run alone. */
@Command(
    name = "heat",
    mixinStandardHelpOptions = true,
    description =
        "Switches a heater on at a set power, records its temperature, switches it off, and works"
            + " out the controller terms. Asks first, and wants the word HEAT. Somebody has to stand"
            + " at the machine: nothing regulates the heater meanwhile.",
    footer = {
      "",
      "Ctrl-C switches the heater off and ends the run; so do the highest temperature, "
          + "the longest time and a line that is lost, as far as the line still carries the "
          + "command.",
      "",
      "Exit status 0: recorded; 2: bad usage; 3: broken off, or no answer."
    })
final class HeatVerb implements Callable<Integer> {
  private static final double EVERY_SECONDS = 0.5;

  /** Kept below the highest temperature that the profile allows, K; our margin. */
  private static final double MARGIN = 15;

  /** Where the profile gives no highest temperature, °C; our choice: low, as nothing is known. */
  private static final double UNKNOWN_LIMIT = 80;

  private static final double LONGEST_SECONDS = 3600;

  @Spec private CommandSpec spec;
  @Mixin private LineOptions line;
  @Mixin private TextOrJson format;
  @Mixin private HistoryOption history;

  @Parameters(index = "1", paramLabel = "HEATER", description = "As the machine reports it.")
  private String heater;

  @Option(
      names = "--on",
      paramLabel = "COMMAND",
      description = "Switches it on at that power; the practice board's is known.")
  private String on;

  @Option(names = "--off", paramLabel = "COMMAND", description = "Switches it off.")
  private String off;

  @Option(
      names = "--power",
      paramLabel = "SHARE",
      description = "Share of full power, above 0 up to 1 (default ${DEFAULT-VALUE}).",
      defaultValue = "0.5")
  private double power;

  @Option(
      names = "--limit",
      paramLabel = "T",
      description =
          "The run ends above it, °C; without it 15 °C below the heater's maximum in the profile, or"
              + " 80 °C where the profile has none. Never above what the profile allows, what the maker of"
              + " the heater rates and what its sensor is made for.")
  private Double limit;

  @Option(
      names = "--longest",
      paramLabel = "SECONDS",
      description = "Longest run (default ${DEFAULT-VALUE}).",
      defaultValue = "600")
  private double seconds;

  @Override
  public Integer call() {
    PrinterProfile printer = Profiles.read(line.profile);
    ThermalRun run = run(printer);
    try (MachineLine machine = MachineLine.open(line, printer, Map.of(), List.of())) {
      if (!agreed(machine, run)) {
        return leftCold();
      }
      try (HeatRecording recording = new HeatRecording(machine, run, asks())) {
        return recorded(printer, machine.session().name(), run, recording);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new DeviceProblem("interrupted; look whether the heater is off", e);
    }
  }

  private Integer leftCold() {
    asks().println("the heater was left cold");
    if (format.json()) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("heater", heater);
      document.put("ending", "left cold");
      document.put("readings", 0);
      document.put("file", null);
      Printed.json(spec, document);
    }
    return ExitStatus.FINE;
  }

  private Integer recorded(
      PrinterProfile printer, String port, ThermalRun run, HeatRecording recording)
      throws InterruptedException {
    try {
      StepResponse response = recording.record();
      Path kept = StepRecord.keep(line.profile, heater, response.csv());
      history.keep(
          spec,
          line.profile,
          past -> past.heatedUp(printer, port, run, response, recording.pressed(), kept));
      report(response, kept, recording.ending(response));
      return ExitStatus.FINE;
    } catch (LinkException broken) {
      throw said(
          recording,
          "broken off: "
              + broken.getMessage()
              + ". Look whether the heater is off; if in doubt, switch the power off.",
          broken);
    } catch (IOException failed) {
      throw said(
          recording,
          "the heater is off, but the readings could not be kept: " + failed.getMessage(),
          failed);
    }
  }

  /** While the program is going down, only what is said at once is still seen. */
  private RuntimeException said(HeatRecording recording, String text, Exception cause) {
    if (!recording.pressed()) {
      return new DeviceProblem(text, cause);
    }
    Printed.err(spec).println(text);
    Printed.err(spec).flush();
    return new CtrlC.Said();
  }

  private ThermalRun run(PrinterProfile printer) {
    if (!(power > 0 && power <= 1)) {
      throw new UsageProblem(
          "--power is " + Answer.sixDigits(power) + "; a number above 0 up to 1 is wanted");
    }
    if (!(seconds > 0 && seconds <= LONGEST_SECONDS)) {
      throw new UsageProblem(
          "--longest is " + Answer.sixDigits(seconds) + " s; it lies above 0, up to 3600 s");
    }
    boolean practice = line.address(printer.link()) instanceof PortAddress.Practice;
    if (!practice && (blank(on) || blank(off))) {
      throw new UsageProblem(
          "give the firmware's commands: --on for "
              + Answer.sixDigits(power * 100)
              + " % power, --off for none");
    }
    return new ThermalRun(
        heater,
        blank(on) ? "POWER " + heater + " S" + power : on,
        blank(off) ? "POWER " + heater + " S0" : off,
        power,
        highest(printer.heaters().get(heater)),
        seconds,
        EVERY_SECONDS);
  }

  private static boolean blank(String command) {
    return command == null || command.isBlank();
  }

  private double highest(Heater described) {
    HeatCeiling ceiling = HeatCeiling.of(described);
    if (limit == null) {
      boolean stated = described != null && described.maximum() != null;
      return Math.min(ceiling.celsius(), stated ? described.maximum() : UNKNOWN_LIMIT + MARGIN)
          - MARGIN;
    }
    if (!Double.isFinite(limit)) {
      throw new UsageProblem("--limit is no number; give the temperature in °C");
    }
    if (limit > ceiling.celsius()) {
      throw new UsageProblem(
          "--limit is "
              + Answer.sixDigits(limit)
              + " °C; "
              + heater
              + " may go up to "
              + Answer.sixDigits(ceiling.celsius())
              + " °C: "
              + ceiling.why());
    }
    return limit;
  }

  /** Where questions go: the document on standard output stays alone. */
  private PrintWriter asks() {
    return format.json() ? Printed.err(spec) : Printed.out(spec);
  }

  private boolean agreed(MachineLine machine, ThermalRun run) {
    PrintWriter out = asks();
    out.println(ThermalRun.CAUTION);
    out.println("Work on mains wiring belongs to a licensed electrician.");
    out.println("on:  " + run.onCommand());
    out.println("off: " + run.offCommand());
    out.print(
        "To heat "
            + heater
            + " on "
            + machine.session().name()
            + " at "
            + Answer.sixDigits(power * 100)
            + " % of its power, up to "
            + Answer.sixDigits(run.highestCelsius())
            + " °C or "
            + Answer.sixDigits(seconds)
            + " s, type HEAT; anything else leaves it cold: ");
    out.flush();
    return Typed.line().equals("HEAT");
  }

  private void report(StepResponse response, Path kept, String ending) {
    Answer answer;
    String trouble = "";
    try {
      answer = StepResponseCalculator.answer(response);
    } catch (IllegalArgumentException noStep) {
      answer = new Answer();
      trouble = noStep.getMessage();
    }
    if (format.json()) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("heater", heater);
      document.put("ending", ending);
      document.put("readings", response.points().size());
      document.put("file", kept.toString());
      document.putAll(answer.values());
      if (!trouble.isEmpty()) {
        document.put("trouble", trouble);
      }
      Printed.json(spec, document);
      return;
    }
    PrintWriter out = Printed.out(spec);
    out.println(ending + "; the heater is off, the line disarmed; readings kept in " + kept);
    answer.text().forEach(text -> out.println("  " + text));
    if (!trouble.isEmpty()) {
      out.println("  no model: " + trouble);
    }
    out.flush();
  }
}
