package dev.gantrywright.link.serial;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;

/** Follows what is plugged in and out by listing the ports again and again. */
public final class PortFollower implements AutoCloseable {
  /** Hears of changes, on the executor's thread; the first look counts as one. */
  @FunctionalInterface
  public interface Listener {
    /**
     * @param now all ports, by name
     * @param plugged what was not there at the look before
     * @param unplugged what is not there any more
     */
    void changed(
        List<PortDescription> now, List<PortDescription> plugged, List<PortDescription> unplugged);
  }

  private final PortList list;
  private final Listener listener;
  private final ScheduledFuture<?> work;
  private List<PortDescription> before;

  private PortFollower(
      PortList list, Duration every, ScheduledExecutorService executor, Listener listener) {
    this.list = list;
    this.listener = listener;
    this.work =
        executor.scheduleWithFixedDelay(this::look, 0, every.toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Begins; ports that are there already count as plugged in. */
  public static PortFollower start(
      PortList list, Duration every, ScheduledExecutorService executor, Listener listener) {
    return new PortFollower(list, every, executor, listener);
  }

  private void look() {
    List<PortDescription> now = List.copyOf(list.ports());
    if (now.equals(before)) {
      return;
    }
    Map<String, PortDescription> old = byDevice(before == null ? List.of() : before);
    Map<String, PortDescription> present = byDevice(now);
    before = now;
    listener.changed(now, without(present, old), without(old, present));
  }

  /** Another device under the same name is another port; who has it open does not matter. */
  private static Map<String, PortDescription> byDevice(List<PortDescription> ports) {
    Map<String, PortDescription> found = new LinkedHashMap<>();
    ports.forEach(p -> found.put(p.name() + " " + p.usb().map(Object::toString).orElse(""), p));
    return found;
  }

  private static List<PortDescription> without(
      Map<String, PortDescription> all, Map<String, PortDescription> known) {
    return all.entrySet().stream()
        .filter(port -> !known.containsKey(port.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  @Override
  public void close() {
    work.cancel(false);
  }
}
