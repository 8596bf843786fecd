package dev.gantrywright.prove;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Reply;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * Records a step response on an armed line. Whatever happens, the command that ends the heating is
 * sent; above the highest temperature allowed the run ends at once.
 *
 * @param heater as the machine reports it
 * @param onCommand switches the power step on
 * @param offCommand switches it off
 * @param powerStep share of full power, above 0 up to 1
 * @param highestCelsius the run ends above it
 * @param seconds longest run
 * @param everySeconds time between readings
 */
public record ThermalRun(
    String heater,
    String onCommand,
    String offCommand,
    double powerStep,
    double highestCelsius,
    double seconds,
    double everySeconds) {
  /** To be shown, and agreed to, before a run. */
  public static final String CAUTION =
      "WARNING: the heater runs at a set power with no temperature control. Stay at the machine with"
          + " a hand on its power switch, keep everything that can burn away, and stop at the first"
          + " smell or smoke.";

  /**
   * Runs it.
   *
   * @param stopped asked between readings; true ends the run
   * @throws LinkException when the line is not armed, is lost, or the heater is not reported
   */
  public StepResponse record(LineSession session, LongSupplier nanoTime, BooleanSupplier stopped)
      throws LinkException, InterruptedException {
    List<StepResponse.Point> points = new ArrayList<>();
    double first = celsius(session);
    try {
      require(session.askAndWait(onCommand));
      long start = nanoTime.getAsLong();
      points.add(new StepResponse.Point(0, first));
      double t = 0;
      double celsius = first;
      while (t < seconds && celsius <= highestCelsius && !stopped.getAsBoolean()) {
        Thread.sleep((long) (everySeconds * 1000));
        celsius = celsius(session);
        t = (nanoTime.getAsLong() - start) / 1e9;
        points.add(new StepResponse.Point(t, celsius));
      }
    } finally {
      session.askAndWait(offCommand);
    }
    return new StepResponse(heater, powerStep, points);
  }

  private double celsius(LineSession session) throws LinkException, InterruptedException {
    Reply reply = session.askAndWait(session.dialect().temperatureQuery());
    require(reply);
    Double celsius = TemperatureReader.read(reply.lines()).get(heater);
    if (celsius == null) {
      throw new LinkException(
          LinkException.Kind.SILENT,
          "no temperature of '" + heater + "' in the reply to " + reply.command());
    }
    return celsius;
  }

  private static void require(Reply reply) throws LinkException {
    if (!reply.answered()) {
      throw new LinkException(
          LinkException.Kind.SILENT, "'" + reply.command() + "' was not obeyed: " + reply.note());
    }
  }
}
