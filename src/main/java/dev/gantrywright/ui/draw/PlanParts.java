package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Axis;
import dev.gantrywright.machine.Contact;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.PlaceNames;
import java.util.Locale;
import java.util.function.Consumer;
import javafx.scene.shape.Rectangle;

/** The symbols that both views of the machine plan are put together from. */
final class PlanParts {
  final Sketch sketch;
  final PlanContent content;
  private final MarkLayer marks;
  private final Consumer<String> open;

  PlanParts(Sketch sketch, PlanContent content, MarkLayer marks, Consumer<String> open) {
    this.sketch = sketch;
    this.content = content;
    this.marks = marks;
    this.open = open;
  }

  PrinterProfile profile() {
    return content.profile();
  }

  /** Span of an axis in words, "X 0…220 mm"; only its name where travel is not given. */
  String span(String axis) {
    Axis values = profile().axes().get(axis);
    String name = axis.toUpperCase(Locale.ROOT);
    if (values == null || values.travelMin() == null || values.travelMax() == null) {
      return name;
    }
    return name
        + " "
        + Shown.number(values.travelMin())
        + "…"
        + Shown.number(values.travelMax())
        + " mm";
  }

  double travel(String axis, double otherwise) {
    Axis values = profile().axes().get(axis);
    if (values == null || values.travelMin() == null || values.travelMax() == null) {
      return otherwise;
    }
    return Math.max(1, values.travelMax() - values.travelMin());
  }

  /** Area that opens a part when clicked, washed where the part is in hand. */
  Rectangle target(String part, double x, double y, double width, double height) {
    if (part.equals(content.chosen())) {
      Rectangle wash = sketch.box(x, y, width, height, "chosen-wash");
      wash.setArcWidth(6);
      wash.setArcHeight(6);
      wash.toBack();
    }
    Rectangle hit = sketch.box(x, y, width, height, "hit");
    hit.setOnMouseClicked(click -> open.accept(part));
    return hit;
  }

  /** Where the sign of the part's gravest finding stands, if it has one. */
  void mark(String part, double x, double y) {
    marks.place(part, x, y);
  }

  /** A motor, after IEC 60617: circle with M. */
  void motor(String axis, double x, double y) {
    String part = "axes." + axis;
    sketch.circle(x, y, 10, "ink", "paper");
    sketch.text("M", x, y + 4, 0.5, "small");
    target(part, x - 13, y - 13, 26, 26);
    mark(part, x + 7, y - 18);
  }

  /** An endstop as a contact, its leads from (x, y); the word stands where there is room. */
  void endstop(String name, double x, double y, double labelX, double labelY, double anchor) {
    String part = "endstops." + name;
    Endstop endstop = profile().endstops().get(name);
    boolean fitted = endstop != null && Boolean.TRUE.equals(endstop.fitted());
    boolean disagrees = content.disagreeing().contains(name);
    ContactState state = content.seen().get(name);
    boolean unknown = state == ContactState.UNKNOWN;
    if (fitted) {
      Contact contact = endstop.contact();
      String style = disagrees ? "wrong" : state == null ? "ink" : unknown ? "faint" : "live";
      ContactState drawn = state == null ? ContactState.OPEN : state;
      ContactSign.across(sketch, x, y, contact, ContactSign.conducts(contact, drawn), style);
    } else {
      sketch.line(x + 12, y, x + 22, y, "faint", "dashed");
    }
    sketch.text(PlaceNames.endstop(name), labelX, labelY, anchor, fitted ? "small" : "quiet");
    if (state != null) {
      String tone = disagrees ? "error-text" : unknown ? "quiet" : "accent-text";
      sketch.text(state.word(), labelX, labelY + 13, anchor, tone);
    }
    double left = anchor == 1 ? labelX - 44 : Math.min(x, labelX);
    double right = Math.max(x + ContactSign.LENGTH, anchor == 1 ? labelX : labelX + 44);
    double top = Math.min(y - 12, labelY - 12);
    target(part, left - 2, top, right - left + 4, Math.max(y, labelY) + 6 - top);
    mark(part, x + ContactSign.LENGTH / 2 - 6, y + 4);
  }

  /** A heating element, after IEC 60617: a rectangle crossed by lines. */
  void heater(String name, double x, double y, double width, double height) {
    String part = "heaters." + name;
    if (!profile().heaters().containsKey(name)) {
      return;
    }
    sketch.box(x, y, width, height, "fine", "paper");
    for (int i = 1; i < 4; i++) {
      sketch.line(x + width * i / 4, y, x + width * i / 4, y + height, "fine");
    }
    target(part, x - 4, y - 4, width + 8, height + 8);
    mark(part, x + width + 4, y - 4);
  }
}
