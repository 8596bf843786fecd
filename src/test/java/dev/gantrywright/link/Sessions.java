package dev.gantrywright.link;

import java.time.Duration;
import java.util.Map;

/** Sessions for tests, impatient ones. */
public final class Sessions {
  private Sessions() {}

  public static SessionTiming quick() {
    return new SessionTiming(
        Duration.ofMillis(5),
        Duration.ofMillis(50),
        Duration.ofSeconds(30),
        Duration.ofMillis(500),
        Duration.ZERO,
        Duration.ofSeconds(3));
  }

  /** What a slow, loaded machine takes for an answer is no time-out. */
  public static Dialect patient() {
    return DialectFile.with(Map.of("replySeconds", 60));
  }

  public static LineSession open(Connector connector) throws LinkException {
    return open(connector, patient(), quick());
  }

  public static LineSession open(Connector connector, Dialect dialect, SessionTiming timing)
      throws LinkException {
    return LineSession.open(
        new LineSession.Parts(
            "test line",
            connector,
            SerialSettings.at(115_200),
            dialect,
            CommandTable.standard(),
            timing,
            ByteLog.inMemory(1 << 16, System.nanoTime()),
            System::nanoTime,
            Thread::new));
  }

  public static LineSession up(Connector connector) throws LinkException, InterruptedException {
    LineSession session = open(connector);
    try {
      session.awaitUp(Duration.ofSeconds(120));
      return session;
    } catch (LinkException e) {
      session.close();
      throw e;
    }
  }
}
