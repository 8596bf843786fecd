package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.ui.state.ContactState;

/**
 * A contact as circuit diagrams after IEC 60617 draw make and break contacts, from memory and
 * without the standard's own proportions; a position that is not known is dashed.
 */
public final class ContactSign {
  /** Length from terminal to terminal, pixels. */
  public static final double LENGTH = 34;

  private ContactSign() {}

  /** Draws the contact along a horizontal line, from (x, y) to (x + LENGTH, y), closed or not. */
  public static void across(
      Sketch sketch, double x, double y, Contact contact, Boolean closed, String style) {
    double left = x + 9;
    double right = x + LENGTH - 9;
    sketch.line(x, y, left, y, style);
    sketch.line(right, y, x + LENGTH, y, style);
    sketch.circle(left, y, 1.8, "dot-" + style);
    sketch.circle(right, y, 1.8, "dot-" + style);
    if (closed == null) {
      sketch.line(left, y, right - 1, y - 8, style, "dashed");
    } else if (closed) {
      sketch.line(left, y, right, y, style, "blade");
    } else {
      sketch.line(left, y, right - 1, y - 8, style, "blade");
    }
    if (contact == Contact.NC && !Boolean.FALSE.equals(closed)) {
      // The break contact's hook stands across the far terminal.
      sketch.line(right, y, right, y - 6, style);
    }
  }

  /** Whether the contact conducts in this state of the endstop; null where nobody knows. */
  public static Boolean conducts(Contact contact, ContactState state) {
    if (contact == null || state == ContactState.UNKNOWN) {
      return null;
    }
    return (contact == Contact.NC) == (state == ContactState.OPEN);
  }
}
