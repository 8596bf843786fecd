package dev.gantrywright.ui.state;

/**
 * What a station of the route shows.
 *
 * @param sign settled, open, or the gravest thing that is open there
 * @param count how many of the gravest; 0 where a count says nothing
 * @param words the state in a few words
 */
public record StationState(Sign sign, int count, String words) {
  /** The sign of a station. */
  public enum Sign {
    OPEN,
    SETTLED,
    NOTE,
    WARNING,
    ERROR
  }

  public static StationState open(String words) {
    return new StationState(Sign.OPEN, 0, words);
  }

  public static StationState settled(String words) {
    return new StationState(Sign.SETTLED, 0, words);
  }
}
