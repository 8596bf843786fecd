package dev.gantrywright.ui.describe;

import javafx.scene.Node;
import javafx.scene.layout.Region;
import tools.jackson.databind.JsonNode;

/** The control in which one value is edited. */
interface FieldEditor {
  /** The control as it stands in the row; carries the marks of its findings. */
  Region box();

  /** What takes the keyboard. */
  Node focus();

  /**
   * Shows the value as the document has it; leaves alone what the user is typing if that already
   * means the same.
   *
   * @param value null where none is given
   */
  void show(JsonNode value);
}
