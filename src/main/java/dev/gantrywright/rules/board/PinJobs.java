package dev.gantrywright.rules.board;

import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.rules.Context;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What each pin of the microcontroller does for this printer. Enable pins and driver UARTs are left
 * out: drivers share them on purpose.
 */
final class PinJobs {
  /** One job: in words, and the field that gives it. */
  record Job(String job, String path) {}

  private final Map<String, List<Job>> byPin = new LinkedHashMap<>();

  private PinJobs() {}

  static PinJobs of(Context context) {
    PinJobs jobs = new PinJobs();
    jobs.ports(context);
    jobs.sockets(context);
    jobs.heaters(context);
    jobs.endstops(context);
    return jobs;
  }

  private void ports(Context context) {
    Integer first = context.profile().serial().port();
    Integer second = context.profile().serial().secondPort();
    context.port(first).ifPresent(port -> pins(port, "the console port", "serial.port"));
    if (!Objects.equals(first, second)) {
      context.port(second).ifPresent(port -> pins(port, "the second port", "serial.secondPort"));
    }
  }

  private void pins(BoardPort port, String job, String path) {
    port.pins().forEach(pin -> add(pin, job, path));
  }

  private void sockets(Context context) {
    PrinterProfile profile = context.profile();
    profile
        .axes()
        .forEach(
            (name, axis) ->
                context
                    .socket(name, axis)
                    .ifPresent(
                        socket -> {
                          String path = "axes." + name + ".driver.socket";
                          add(socket.step(), "the step signal of axis " + name, path);
                          add(socket.direction(), "the direction of axis " + name, path);
                        }));
  }

  private void heaters(Context context) {
    context
        .profile()
        .heaters()
        .forEach(
            (name, heater) -> {
              String path = "heaters." + name;
              context
                  .output(heater)
                  .ifPresent(out -> add(out.pin(), "the " + name + " heater", path + ".output"));
              context
                  .sensorInput(heater)
                  .ifPresent(in -> add(in.pin(), "the " + name + " sensor", path + ".input"));
            });
  }

  private void endstops(Context context) {
    context
        .profile()
        .endstops()
        .forEach(
            (name, endstop) -> {
              if (Boolean.TRUE.equals(endstop.fitted())) {
                context
                    .input(endstop)
                    .ifPresent(in -> add(in.pin(), "endstop " + name, "endstops." + name + ".pin"));
              }
            });
  }

  private void add(String pin, String job, String path) {
    if (pin != null) {
      byPin.computeIfAbsent(pin, key -> new ArrayList<>()).add(new Job(job, path));
    }
  }

  /** The pins with more than one job. */
  Map<String, List<Job>> shared() {
    Map<String, List<Job>> shared = new LinkedHashMap<>();
    byPin.forEach(
        (pin, jobs) -> {
          if (jobs.size() > 1) {
            shared.put(pin, jobs);
          }
        });
    return shared;
  }
}
