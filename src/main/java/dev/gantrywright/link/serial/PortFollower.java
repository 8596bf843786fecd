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
  /** Hears of changes, on the executor's thread. */
  public interface Listener {
    void plugged(PortDescription port);

    void unplugged(PortDescription port);
  }

  private final PortList list;
  private final Listener listener;
  private final ScheduledFuture<?> work;
  private Map<String, PortDescription> before = new LinkedHashMap<>();

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
    List<PortDescription> ports = list.ports();
    Map<String, PortDescription> now = new LinkedHashMap<>();
    // Another device under the same name is another port.
    ports.forEach(p -> now.put(p.name() + " " + p.usb().map(Object::toString).orElse(""), p));
    before.forEach(
        (key, port) -> {
          if (!now.containsKey(key)) {
            listener.unplugged(port);
          }
        });
    now.forEach(
        (key, port) -> {
          if (!before.containsKey(key)) {
            listener.plugged(port);
          }
        });
    before = now;
  }

  @Override
  public void close() {
    work.cancel(false);
  }
}
