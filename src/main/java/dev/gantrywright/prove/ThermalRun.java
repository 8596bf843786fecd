package dev.gantrywright.prove;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Reply;
import dev.gantrywright.link.StopOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
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
          + " a hand on its power switch, keep away whatever can burn, and stop at the first"
          + " smell or smoke.";

  /**
   * Runs it.
   *
   * @param stopped asked between readings; true ends the run
   * @throws LinkException when the line is not armed, is lost, or the heater is not reported
   */
  public StepResponse record(LineSession session, LongSupplier nanoTime, BooleanSupplier stopped)
      throws LinkException, InterruptedException {
    return record(session, nanoTime, stopped, point -> {});
  }

  /**
   * The same, telling each reading.
   *
   * @param sink receives each point, on the calling thread
   */
  public StepResponse record(
      LineSession session,
      LongSupplier nanoTime,
      BooleanSupplier stopped,
      Consumer<StepResponse.Point> sink)
      throws LinkException, InterruptedException {
    double first = celsius(session);
    Reply on = session.askAndWait(onCommand);
    if (on.outcome() == Reply.Outcome.REFUSED) {
      // It never left: there is nothing to be switched off.
      require(on);
    }
    List<StepResponse.Point> points;
    try {
      require(on);
      points = readings(session, first, nanoTime, stopped, sink);
    } catch (LinkException failed) {
      throw new LinkException(failed.kind(), failed.getMessage() + after(off(session)), failed);
    } catch (InterruptedException | RuntimeException ended) {
      off(session);
      throw ended;
    }
    String trouble = off(session);
    if (!trouble.isEmpty()) {
      throw new LinkException(LinkException.Kind.SILENT, trouble);
    }
    return new StepResponse(heater, powerStep, points);
  }

  private List<StepResponse.Point> readings(
      LineSession session,
      double first,
      LongSupplier nanoTime,
      BooleanSupplier stopped,
      Consumer<StepResponse.Point> sink)
      throws LinkException, InterruptedException {
    List<StepResponse.Point> points = new ArrayList<>();
    long start = nanoTime.getAsLong();
    StepResponse.Point point = new StepResponse.Point(0, first);
    points.add(point);
    sink.accept(point);
    while (point.seconds() < seconds
        && point.celsius() <= highestCelsius
        && session.armed()
        && !stopped.getAsBoolean()) {
      Thread.sleep((long) (everySeconds * 1000));
      double celsius = celsius(session);
      point = new StepResponse.Point((nanoTime.getAsLong() - start) / 1e9, celsius);
      points.add(point);
      sink.accept(point);
    }
    return points;
  }

  private static String after(String trouble) {
    return trouble.isEmpty() ? "" : "; " + trouble;
  }

  /**
   * Switches off, whatever came before. Where the command is not obeyed (the line was disarmed
   * meanwhile, or is lost), the stop follows, which needs no arming.
   *
   * @return what is to be looked at; empty where it was obeyed
   */
  private String off(LineSession session) {
    Reply reply = session.ask(offCommand).join();
    if (reply.answered()) {
      return "";
    }
    StopOutcome stop = session.stop().join();
    return "'"
        + offCommand
        + "' was not obeyed ("
        + reply.note()
        + "), so the stop was sent. "
        + stop.advice();
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
