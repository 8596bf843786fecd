package dev.gantrywright.ui.describe;

import java.util.Optional;

/** Takes an edit of one field. */
@FunctionalInterface
interface EditSink {
  /**
   * @param value null takes the value away
   * @return one clear line where it is refused
   */
  Optional<String> accept(Object value);
}
