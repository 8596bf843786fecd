package dev.gantrywright.header;

import java.util.List;

/**
 * What a condition looked at when it was evaluated.
 *
 * @param names the first of the macro names that it asked for, with what they meant there
 * @param error what is wrong with the condition, or null
 */
record Evidence(List<Item> names, String error) {
  static final Evidence NONE = new Evidence(List.of(), null);

  /** One name and its meaning. */
  record Item(String name, Meaning meaning) {}
}
