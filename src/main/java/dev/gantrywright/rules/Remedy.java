package dev.gantrywright.rules;

import java.util.List;

/**
 * A change that would settle a finding, as data.
 *
 * @param title what it does, in one line
 * @param edits applied together, in this order; empty where only a hand can do it
 */
public record Remedy(String title, Safety safety, List<Edit> edits) {
  public Remedy {
    edits = List.copyOf(edits);
  }

  /** One edit of one document. */
  public sealed interface Edit {
    /** The profile field that it is about. */
    String path();
  }

  /**
   * Gives a profile field a value.
   *
   * @param value a number, boolean, text or list; null takes the value away
   */
  public record SetField(String path, Object value) implements Edit {}

  /**
   * Corrects where the name map says that a field stands.
   *
   * @param macro the macro; null takes the entry out of the map
   * @param element index in its brace list; null for the whole value
   */
  public record SetName(String path, String macro, Integer element, String file, Integer line)
      implements Edit {}

  /** A remedy that follows from facts already stated. */
  public static Remedy safe(String title, String path, Object value) {
    return new Remedy(title, Safety.SAFE, List.of(new SetField(path, value)));
  }

  /** A remedy to look at first, because another stated fact may be the wrong one. */
  public static Remedy review(String title, String path, Object value) {
    return new Remedy(title, Safety.REVIEW, List.of(new SetField(path, value)));
  }

  /** Work for the hand. */
  public static Remedy show(String title) {
    return new Remedy(title, Safety.SHOW_ONLY, List.of());
  }

  /** Whether it can be applied by a click. */
  public boolean applicable() {
    return !edits.isEmpty();
  }
}
