package dev.gantrywright.ui.describe;

import java.util.List;
import java.util.Optional;

/** What may be picked into a field. */
@FunctionalInterface
public interface Pickers {
  /** Empty where the field is free. */
  List<PickerChoice> choices(String path);

  /** What the catalogue says is to be minded with the part that stands in a field, with source. */
  default Optional<String> toMind(String path, String value) {
    return Optional.empty();
  }
}
