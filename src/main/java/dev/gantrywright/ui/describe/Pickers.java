package dev.gantrywright.ui.describe;

import java.util.List;

/** What may be picked into a field. */
@FunctionalInterface
public interface Pickers {
  /** Empty where the field is free. */
  List<PickerChoice> choices(String path);
}
