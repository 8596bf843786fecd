package dev.gantrywright.link;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.LongSupplier;

/** Finds the baud rate of a line by asking at one rate after the other. Only a question is sent. */
public final class BaudSearch {
  /** The usual rates, most likely first (common practice, no published source). */
  public static final List<Integer> USUAL =
      List.of(
          115_200, 250_000, 57_600, 38_400, 19_200, 9_600, 230_400, 500_000, 921_600, 1_000_000);

  private static final int FREE_TRIES = 20;
  private static final long FREE_NANOS = 100_000_000L;

  /**
   * What was heard at one rate.
   *
   * @param answered an acknowledged reply came, or a line of text where nothing is acknowledged
   * @param textShare share of printable characters among what came, 0 to 1; 0 when nothing came
   */
  public record Heard(int baud, boolean answered, double textShare) {}

  private final Connector connector;
  private final SerialSettings settings;
  private final Dialect dialect;
  private final String question;
  private final LongSupplier nanoTime;

  /**
   * @throws IllegalArgumentException when the dialect's question is known to move, heat or write
   */
  public BaudSearch(
      Connector connector, SerialSettings settings, Dialect dialect, LongSupplier nanoTime) {
    this.connector = connector;
    this.settings = settings;
    this.dialect = dialect;
    // Nothing has been asked of the user yet: what is sent here must be a question.
    this.question = new CommandGate(CommandTable.standard(), dialect).question(identity(dialect));
    this.nanoTime = nanoTime;
  }

  /** Who watches the search, and may end it. */
  @FunctionalInterface
  public interface Going {
    /**
     * Asked before each rate, and again each time that nothing has come for a moment.
     *
     * @return false to end the search
     */
    boolean on(int baud);
  }

  /**
   * Tries the rates in turn until one answers.
   *
   * @param patience how long to listen at each rate
   * @param going whether to go on
   * @return what was heard, the last entry answered where one was found
   * @throws LinkException when the line itself cannot be opened or is lost
   */
  public List<Heard> run(List<Integer> rates, Duration patience, Going going) throws LinkException {
    List<Heard> heard = new ArrayList<>();
    for (int baud : rates) {
      if (!going.on(baud)) {
        break;
      }
      Heard one =
          heard.isEmpty() ? listen(baud, patience, going) : listenWhenFree(baud, patience, going);
      heard.add(one);
      if (one.answered()) {
        break;
      }
    }
    return heard;
  }

  private static String identity(Dialect dialect) {
    return dialect.identityQuery().isBlank() ? dialect.endstopQuery() : dialect.identityQuery();
  }

  /** The usual rates with the one that is described first. */
  public static List<Integer> usualFrom(int described) {
    List<Integer> rates = new ArrayList<>(USUAL);
    rates.remove(Integer.valueOf(described));
    rates.add(0, described);
    return rates;
  }

  /** The rate that answered, if any did. */
  public static Optional<Integer> found(List<Heard> heard) {
    return heard.stream().filter(Heard::answered).map(Heard::baud).findFirst();
  }

  /** A remote server may need a moment to see that we have let its port go. */
  private Heard listenWhenFree(int baud, Duration patience, Going going) throws LinkException {
    for (int tries = 0; ; tries++) {
      try {
        return listen(baud, patience, going);
      } catch (LinkException e) {
        boolean ours = e.kind() == LinkException.Kind.BUSY || e.kind() == LinkException.Kind.LOST;
        if (!ours || tries >= FREE_TRIES) {
          throw e;
        }
        LockSupport.parkNanos(FREE_NANOS);
      }
    }
  }

  private Heard listen(int baud, Duration patience, Going going) throws LinkException {
    boolean[] answered = {false};
    LineSplitter splitter =
        new LineSplitter(dialect.longestLine(), line -> answered[0] |= answers(line));
    long text = 0;
    long all = 0;
    try (Transport line = connector.open(settings.withBaud(baud))) {
      byte[] asked = ("\n" + question + "\n").getBytes(StandardCharsets.US_ASCII);
      long end = nanoTime.getAsLong() + patience.toNanos();
      long askAgain = nanoTime.getAsLong();
      byte[] buffer = new byte[1024];
      while (!answered[0] && going.on(baud) && nanoTime.getAsLong() - end < 0) {
        if (nanoTime.getAsLong() - askAgain >= 0) {
          line.write(asked);
          askAgain += patience.toNanos() / 3;
        }
        int n = line.read(buffer, Duration.ofMillis(50));
        splitter.feed(buffer, n, nanoTime.getAsLong());
        all += n;
        text += printable(buffer, n);
      }
    }
    return new Heard(baud, answered[0], all == 0 ? 0 : (double) text / all);
  }

  private boolean answers(ReceivedLine line) {
    return !line.garbage()
        && (dialect.acknowledge().isEmpty() || Words.begins(line.text(), dialect.acknowledge()));
  }

  private static long printable(byte[] bytes, int count) {
    long n = 0;
    for (int i = 0; i < count; i++) {
      n += (bytes[i] >= ' ' && bytes[i] < 0x7F) || bytes[i] == '\n' || bytes[i] == '\r' ? 1 : 0;
    }
    return n;
  }
}
