package dev.gantrywright.ui.state;

/**
 * What a station of the route shows.
 *
 * @param sign settled, open, or the gravest thing that is open there
 * @param count how many of the gravest; 0 where a count says nothing
 * @param words the state in a few words
 * @param brief the state in the fewest, for a window without room
 */
public record StationState(Sign sign, int count, String words, String brief) {
  /** The sign of a station. */
  public enum Sign {
    OPEN,
    SETTLED,
    NOTE,
    WARNING,
    ERROR
  }

  public StationState(Sign sign, int count, String words) {
    this(sign, count, words, words);
  }

  /** With the words of a key, and those of {@code KEY.brief} where there is one. */
  public static StationState of(Sign sign, int count, String key, Object... values) {
    String words = Texts.of(key, values);
    String brief = key + ".brief";
    return new StationState(sign, count, words, Texts.has(brief) ? Texts.of(brief, values) : words);
  }

  /** Open, with the words of a key. */
  public static StationState open(String key, Object... values) {
    return of(Sign.OPEN, 0, key, values);
  }

  /** Settled, with the words of a key. */
  public static StationState settled(String key) {
    return of(Sign.SETTLED, 0, key);
  }

  /** Open, with words that are no text of the bundle. */
  public static StationState openAs(String words) {
    return new StationState(Sign.OPEN, 0, words);
  }
}
