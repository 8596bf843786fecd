package dev.gantrywright.rules;

import java.util.ArrayList;
import java.util.List;

/**
 * What a book found on one input, kept rule by rule so that a later edit re-runs only what it
 * touches.
 *
 * @param input what was checked
 * @param byRule the findings of each rule, in the order of the book
 */
public record Checked(CheckInput input, List<List<Finding>> byRule) {
  public Checked {
    byRule = List.copyOf(byRule);
  }

  /** Every finding, worst first. */
  public List<Finding> findings() {
    List<Finding> all = new ArrayList<>();
    byRule.forEach(all::addAll);
    all.sort(Finding.WORST_FIRST);
    return List.copyOf(all);
  }
}
