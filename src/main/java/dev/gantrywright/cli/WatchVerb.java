package dev.gantrywright.cli;

import dev.gantrywright.link.practice.Press;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Sample;
import dev.gantrywright.prove.Watch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints live endstop states. */
@Command(
    name = "watch",
    mixinStandardHelpOptions = true,
    description =
        "Shows the endstops live, until Ctrl-C or for a number of seconds. On the practice board a"
            + " practice hand touches one endstop after the other.")
final class WatchVerb implements Callable<Integer> {
  enum Format {
    text,
    csv,
    json
  }

  private static final long LONGEST_END_SECONDS = 2;

  @Spec private CommandSpec spec;
  @Mixin private LineOptions line;

  @Option(
      names = "--for",
      paramLabel = "SECONDS",
      description = "How long; without it until Ctrl-C.")
  private double seconds;

  @Option(
      names = "--rate",
      paramLabel = "HZ",
      defaultValue = "20",
      description =
          "Questions a second (default ${DEFAULT-VALUE}); 0 for as many as the line takes.")
  private double hertz;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description =
          "How to print: text (a line a change), csv (a row a sample), json (one document at the"
              + " end).")
  private Format format;

  @Override
  public Integer call() {
    if (seconds < 0 || hertz < 0 || hertz > 10_000) {
      throw new UsageProblem(
          seconds >= 0 ? "--rate lies from 0 to 10,000 Hz" : "--for must not be negative");
    }
    List<String> ends = new ArrayList<>();
    PrinterProfile printer = Profiles.read(line.profile);
    printer
        .endstops()
        .forEach(
            (end, endstop) -> {
              if (Boolean.TRUE.equals(endstop.fitted())) {
                ends.add(end);
              }
            });
    List<Press> hand = Press.inTurn(ends, 0.6, 0.4, 200);
    try (MachineLine machine = MachineLine.open(line, printer, Map.of(), hand)) {
      WatchPrinter shown = WatchPrinter.of(format, Printed.out(spec), ends);
      LineEnd end = new LineEnd(machine, LONGEST_END_SECONDS);
      Watch watch =
          Watch.start(
              machine.session(),
              machine.profile().endstops().keySet(),
              hertz,
              shown::sample,
              System::nanoTime,
              Thread::new);
      end.await(seconds);
      watch.close();
      shown.end();
      Printed.out(spec).flush();
      end.close();
      return shown.last() == Sample.Validity.DISCONNECTED ? lost(machine) : ExitStatus.FINE;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new DeviceProblem("interrupted", e);
    }
  }

  private static int lost(MachineLine machine) {
    throw new DeviceProblem(
        machine.session().name() + " was lost while watching: " + machine.session().note());
  }
}
