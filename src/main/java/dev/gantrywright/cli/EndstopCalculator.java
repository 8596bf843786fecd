package dev.gantrywright.cli;

import dev.gantrywright.physics.EndstopLogic;
import dev.gantrywright.physics.EndstopLogic.Contact;
import dev.gantrywright.physics.EndstopLogic.Input;
import dev.gantrywright.physics.EndstopLogic.Level;
import dev.gantrywright.physics.EndstopLogic.Outcome;
import dev.gantrywright.physics.EndstopLogic.Sensor;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** compute endstop. */
@Command(
    name = "endstop",
    description = "What an endstop input reads at rest, pressed, and with a broken wire.")
final class EndstopCalculator extends Calculator {
  @Option(
      names = "--contact",
      paramLabel = "NO|NC",
      required = true,
      description = "NO: off at rest, NC: on at rest.")
  String contact;

  @Option(
      names = "--input",
      paramLabel = "PULL",
      required = true,
      description = "pull-up, pull-down, or driven where the sensor or its board carries the pull.")
  String input;

  @Option(
      names = "--sensor",
      paramLabel = "KIND",
      defaultValue = "switch",
      description = "switch, npn or pnp (default ${DEFAULT-VALUE}).")
  String sensor;

  @Override
  Answer answer() {
    Input pull = choice(Input.class, "--input", input);
    Outcome outcome =
        EndstopLogic.of(
            choice(Contact.class, "--contact", contact),
            pull,
            choice(Sensor.class, "--sensor", sensor));
    Answer answer =
        new Answer()
            .word("idleLevel", "at rest", word(outcome.idle()))
            .word("pressedLevel", "pressed", word(outcome.pressed()))
            .truth("activeLow", "low means pressed", outcome.activeLow())
            .truth("brokenWireDetected", "broken wire noticed", outcome.brokenWireDetected());
    if (!outcome.tells()) {
      answer.line("mind", "the level never changes: this sensor needs the other pull");
    }
    if (pull == Input.DRIVEN) {
      answer.line("mind", "with a broken wire this input floats and may read anything");
    }
    return answer.line("source", "identities of contact and pull; IEC 60947-5-2 for npn and pnp");
  }

  private <E extends Enum<E>> E choice(Class<E> type, String option, String text) {
    return Arrays.stream(type.getEnumConstants())
        .filter(value -> spelled(value).equalsIgnoreCase(text.strip()))
        .findFirst()
        .orElseThrow(
            () ->
                problem(
                    option
                        + " "
                        + text
                        + " is not known; known are "
                        + Arrays.stream(type.getEnumConstants())
                            .map(EndstopCalculator::spelled)
                            .collect(Collectors.joining(", "))));
  }

  private static String spelled(Enum<?> value) {
    return value instanceof Contact
        ? value.name()
        : value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String word(Level level) {
    return level.name().toLowerCase(Locale.ROOT);
  }
}
