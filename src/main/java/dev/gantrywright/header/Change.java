package dev.gantrywright.header;

import java.util.List;

/** One thing to change in a firmware folder, named by the macro or key that it is about. */
public sealed interface Change {
  /** Why, in the user's words; kept with the outcome. */
  String cause();

  /**
   * Gives a macro a value.
   *
   * @param name macro name
   * @param value replacement text, as it shall stand in the file; see {@link StringLiteral}
   */
  record SetValue(String name, String value, String cause) implements Change {}

  /**
   * Gives one element of a brace list a value.
   *
   * @param path index at each nesting level, counted from 0
   */
  record SetElement(String name, List<Integer> path, String value, String cause) implements Change {
    public SetElement {
      path = List.copyOf(path);
      if (path.isEmpty()) {
        throw new IllegalArgumentException("an element needs an index");
      }
    }

    public SetElement(String name, int index, String value, String cause) {
      this(name, List.of(index), value, cause);
    }

    /** The index in the outer list. */
    public int index() {
      return path.get(0);
    }
  }

  /** Takes the comment marks off a commented-out definition. */
  record SwitchOn(String name, String cause) implements Change {}

  /** Comments a definition out. */
  record SwitchOff(String name, String cause) implements Change {}

  /**
   * Adds a line behind a definition.
   *
   * @param anchorName the macro behind whose definition the line shall stand
   * @param line the line, without a line end
   */
  record InsertAfter(String anchorName, String line, String cause) implements Change {}

  /** Gives a key of the build settings a value; {@code \n} starts a further line of the value. */
  record SetKey(String section, String key, String value, String cause) implements Change {}
}
