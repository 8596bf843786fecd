package dev.gantrywright.link;

import java.time.Duration;

/**
 * How patient a session is.
 *
 * @param firstBackOff wait before the line is opened again
 * @param longestBackOff the wait doubles up to this
 * @param syncFor how long an open line may stay silent before it is opened anew
 * @param askEvery how often a silent board is asked meanwhile
 * @param idleRelease give the port up after so long without a command; zero for never
 * @param closeWithin how long a driver may take to close
 */
public record SessionTiming(
    Duration firstBackOff,
    Duration longestBackOff,
    Duration syncFor,
    Duration askEvery,
    Duration idleRelease,
    Duration closeWithin) {
  /** What suits boards that take some seconds to start. */
  public static SessionTiming standard() {
    return new SessionTiming(
        Duration.ofMillis(100),
        Duration.ofSeconds(1),
        Duration.ofSeconds(10),
        Duration.ofMillis(500),
        Duration.ZERO,
        Duration.ofSeconds(3));
  }

  public SessionTiming withIdleRelease(Duration idle) {
    return new SessionTiming(firstBackOff, longestBackOff, syncFor, askEvery, idle, closeWithin);
  }

  public SessionTiming withSync(Duration syncFor, Duration askEvery) {
    return new SessionTiming(
        firstBackOff, longestBackOff, syncFor, askEvery, idleRelease, closeWithin);
  }
}
