package dev.gantrywright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The verb compute: the trade's calculators. */
@Command(
    name = "compute",
    mixinStandardHelpOptions = true,
    description =
        "The trade's calculators: steps/mm, baud rates, driver current, sensors and more.",
    subcommands = {
      StepsPerMmCalculator.class,
      BaudCalculator.class,
      DriverCurrentCalculator.class,
      NtcCalculator.class,
      RtdCalculator.class,
      StepRateCalculator.class,
      EndstopCalculator.class,
      CalibrateCalculator.class,
      StepResponseCalculator.class
    })
final class ComputeVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin TextOrJson format;

  @Override
  public Integer call() {
    throw new UsageProblem(
        "compute: say what to compute: " + String.join(", ", spec.subcommands().keySet()));
  }
}
