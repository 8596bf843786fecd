package dev.gantrywright.rules.endstops;

import dev.gantrywright.machine.BoardInput;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Sink;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Two endstops ask for the same interrupt line. */
@Rule(
    id = "GW-E027",
    slug = "interrupt-line-shared",
    level = Level.ERROR,
    family = Family.ENDSTOPS,
    fix = Rule.Fix.REVIEW,
    summary = "Two endstops ask for the same interrupt line",
    reads = {"endstops.*.interrupt", "endstops.*.pin", "endstops.*.fitted", "board.mcu"},
    source =
        "STM32 reference manuals, EXTI line mapping: line n belongs to pin n of one port at a time")
public final class InterruptLineShared implements Check {
  private static final Pattern PIN = Pattern.compile("P[A-K]([0-9]{1,2})");

  @Override
  public void check(Context context, Sink sink) {
    if (context.mcu().filter(mcu -> mcu.uartKind().equals("stm32")).isEmpty()) {
      return;
    }
    Map<String, String> first = new LinkedHashMap<>();
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              String pin = context.input(endstop).map(BoardInput::pin).orElse("");
              Matcher number = PIN.matcher(pin);
              if (!Levels.fitted(endstop)
                  || !Boolean.TRUE.equals(endstop.interrupt())
                  || !number.matches()) {
                return;
              }
              String other = first.putIfAbsent(number.group(1), pin + " of " + name);
              if (other != null && !other.startsWith(pin + " ")) {
                String path = "endstops." + name + ".interrupt";
                sink.report(
                    path,
                    "found true at "
                        + pin
                        + "; interrupt line "
                        + number.group(1)
                        + " already serves "
                        + other,
                    Remedy.review("Ask the pin again and again instead", path, false));
              }
            });
  }
}
