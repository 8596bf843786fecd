package dev.gantrywright.cli;

import dev.gantrywright.physics.OutOfDomain;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** One calculator of the verb compute: reads options, asks physics, prints the answer. */
@Command(mixinStandardHelpOptions = true)
abstract class Calculator implements Callable<Integer> {
  @Spec CommandSpec spec;
  @Mixin TextOrJson format;
  @ParentCommand ComputeVerb compute;

  /**
   * The answer to the options given.
   *
   * @throws OutOfDomain if the values have no answer
   * @throws UsageProblem if options are missing or do not go together
   */
  abstract Answer answer();

  @Override
  public final Integer call() {
    Answer answer;
    try {
      answer = answer();
    } catch (OutOfDomain e) {
      throw problem(e.getMessage());
    }
    if (format.json() || compute.format.json()) {
      Printed.json(spec, answer.values());
    } else {
      answer.text().forEach(Printed.out(spec)::println);
    }
    return ExitStatus.FINE;
  }

  final UsageProblem problem(String text) {
    return new UsageProblem("compute " + spec.name() + ": " + text);
  }

  /** The value of an option that this combination needs. */
  final <T> T needed(T value, String option, String what) {
    if (value == null) {
      throw problem(option + " is needed: " + what);
    }
    return value;
  }

  /** The value of an option that counts something. */
  final double whole(double value, String option) {
    if (value != Math.rint(value)) {
      throw problem(option + " is a count: give a whole number, not " + value);
    }
    return value;
  }

  /** Refuses an option that does not go with the others. */
  final void refuse(boolean given, String option, String why) {
    if (given) {
      throw problem(option + " does not fit: " + why);
    }
  }
}
