package dev.gantrywright.cli;

import dev.gantrywright.link.UsbIdentity;
import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.link.serial.PortFollower;
import dev.gantrywright.link.serial.PortList;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Lists the serial ports, and follows them. */
@Command(
    name = "ports",
    mixinStandardHelpOptions = true,
    description =
        "Lists the serial ports of this computer: USB identity, what each probably is, whether"
            + " another program has it, and what keeps you from opening it.")
final class PortsVerb implements Callable<Integer> {
  private static final Duration EVERY = Duration.ofMillis(500);
  private static final long LAST_LOOK_SECONDS = 10;

  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;

  @Option(names = "--follow", description = "Then tell what is plugged in and out, until Ctrl-C.")
  private boolean follow;

  @Option(
      names = "--for",
      paramLabel = "SECONDS",
      description = "Follow for so long; with --format json the document comes at the end.")
  private double seconds;

  @Override
  public Integer call() {
    if (seconds < 0) {
      throw new UsageProblem("--for must not be negative");
    }
    if (follow || seconds > 0) {
      return follow(PortList.system());
    }
    List<PortDescription> ports = PortList.system().ports();
    if (format.json()) {
      Printed.json(spec, Map.of("ports", ports.stream().map(PortsVerb::row).toList()));
    } else {
      print(ports);
    }
    return ExitStatus.FINE;
  }

  private void print(List<PortDescription> ports) {
    PrintWriter out = Printed.out(spec);
    if (ports.isEmpty()) {
      out.println("no serial port; plug a board in, or use practice:");
    }
    ports.forEach(this::print);
    out.flush();
  }

  private void print(PortDescription port) {
    PrintWriter out = Printed.out(spec);
    out.println(port.name() + "  " + port.description());
    port.usb().ifPresent(usb -> out.println("    " + usb));
    if (!port.probably().isEmpty()) {
      out.println("    probably " + port.probably());
    }
    port.holder().ifPresent(h -> out.println("    in use by " + h));
    if (!port.obstacle().isEmpty()) {
      out.println("    " + port.obstacle());
    }
  }

  /** Lists, then tells of changes; package-private so that a test can plug and unplug. */
  int follow(PortList list) {
    long began = System.nanoTime();
    List<Map<String, Object>> changes = new ArrayList<>();
    AtomicReference<List<PortDescription>> first = new AtomicReference<>();
    CountDownLatch pressed = new CountDownLatch(1);
    ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor();
    PortFollower.Listener told =
        (now, plugged, unplugged) -> {
          if (first.compareAndSet(null, now)) {
            if (!format.json()) {
              print(now);
            }
            return;
          }
          double at = (System.nanoTime() - began) / 1e9;
          unplugged.forEach(port -> changes.add(change("unplugged", port, at)));
          plugged.forEach(port -> changes.add(change("plugged", port, at)));
        };
    try (CtrlC stop = new CtrlC(pressed::countDown);
        PortFollower follower = PortFollower.start(list, EVERY, clock, told)) {
      if (seconds > 0) {
        await(pressed, seconds);
      } else {
        pressed.await();
      }
      follower.close();
      clock.shutdown();
      boolean over = clock.awaitTermination(LAST_LOOK_SECONDS, TimeUnit.SECONDS);
      if (format.json() && over) {
        Map<String, Object> document = new LinkedHashMap<>();
        document.put("ports", first.get().stream().map(PortsVerb::row).toList());
        document.put("changes", changes);
        Printed.json(spec, document);
      }
      return ExitStatus.FINE;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new DeviceProblem("interrupted", e);
    } finally {
      clock.shutdownNow();
    }
  }

  /** Until the key is pressed, or the time is over. */
  private static boolean await(CountDownLatch pressed, double seconds) throws InterruptedException {
    return pressed.await((long) (seconds * 1e9), TimeUnit.NANOSECONDS);
  }

  private Map<String, Object> change(String what, PortDescription port, double seconds) {
    if (!format.json()) {
      Printed.out(spec).print(what + "  ");
      print(port);
      Printed.out(spec).flush();
    }
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("change", what);
    row.put("seconds", Math.round(seconds * 1000) / 1000.0);
    row.putAll(row(port));
    return row;
  }

  private static Map<String, Object> row(PortDescription port) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", port.name());
    row.put("description", port.description());
    row.put("usb", port.usb().map(UsbIdentity::toString).orElse(null));
    row.put("probably", port.probably());
    row.put("inUseBy", port.holder().orElse(null));
    row.put("obstacle", port.obstacle());
    return row;
  }
}
