package dev.gantrywright.ui.state;

import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.link.serial.PortFollower;
import dev.gantrywright.link.serial.PortList;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;

/** The serial ports of this computer as they are now; looked at only while somebody wants them. */
public final class PortsDesk implements AutoCloseable {
  /** Soon enough after a plug, and seldom enough to cost nothing. */
  private static final Duration EVERY = Duration.ofSeconds(1);

  private final PortList list;
  private final Executor view;
  private final Cell<Optional<List<PortDescription>>> ports = new Cell<>(Optional.empty());
  private ScheduledExecutorService watch;
  private PortFollower follower;

  /**
   * @param view hands over to the view's thread
   */
  public PortsDesk(PortList list, Executor view) {
    this.list = list;
    this.view = view;
  }

  /** All ports, by name; empty before the first look. */
  public Cell<Optional<List<PortDescription>>> ports() {
    return ports;
  }

  /** Looks again and again from now on, or no more. */
  public void follow(boolean on) {
    if (!on) {
      close();
    } else if (watch == null) {
      watch =
          Executors.newSingleThreadScheduledExecutor(
              task -> {
                Thread thread = new Thread(task, "ports");
                thread.setDaemon(true);
                return thread;
              });
      follower =
          PortFollower.start(
              list,
              EVERY,
              watch,
              (now, plugged, unplugged) -> view.execute(() -> ports.set(Optional.of(now))));
    }
  }

  @Override
  public void close() {
    if (watch != null) {
      follower.close();
      watch.shutdown();
      watch = null;
    }
  }
}
