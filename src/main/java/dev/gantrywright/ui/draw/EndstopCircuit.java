package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.InputPull;
import dev.gantrywright.machine.SensorKind;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.EndstopLevels;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * The circuit of one endstop, drawn with IEC 60617 symbols, and beside it the level at the pin at
 * rest and touched with what the firmware reads: polarity is seen, not guessed.
 */
public final class EndstopCircuit extends Region {
  private static final double HEIGHT = 186;

  private final Sketch sketch = new Sketch();
  private Endstop endstop;
  private boolean touched;

  public EndstopCircuit() {
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
  }

  /**
   * @param touched whether the contact is drawn as it stands when touched
   */
  public void show(Endstop next, boolean touched) {
    this.endstop = next;
    this.touched = touched;
    draw();
  }

  private void draw() {
    sketch.clear();
    EndstopLevels levels = EndstopLevels.of(endstop);
    setAccessibleText(new LevelDiagram(sketch, levels).words());
    board();
    boolean threeWire = endstop.sensor() == SensorKind.NPN || endstop.sensor() == SensorKind.PNP;
    if (threeWire) {
      sensor(endstop.sensor() == SensorKind.NPN);
    } else {
      plainSwitch(endstop.input() == InputPull.PULL_DOWN);
    }
    new LevelDiagram(sketch, levels).draw(316, 14, touched);
  }

  /** The board's side: rail, pull, node, input. */
  private void board() {
    sketch.box(0.5, 0.5, 138, HEIGHT - 1, "hair", "paper");
    sketch.text(Texts.of("circuit.board"), 10, 18, 0, "quiet");
    double node = 92;
    sketch.line(66, node, 150, node, "ink");
    sketch.circle(104, node, 2.5, "solid");
    sketch.polygon("solid", 66, node - 4, 66, node + 4, 58, node);
    sketch.box(12, node - 18, 46, 36, "ink", "paper");
    String pin = endstop.pin() == null ? Texts.of("circuit.pin") : endstop.pin();
    sketch.text(pin, 35, node + 4, 0.5, "small");
    boolean internal = Boolean.TRUE.equals(endstop.pullUp());
    InputPull pull = endstop.input();
    if (pull == InputPull.PULL_DOWN) {
      resistor(104, node, HEIGHT - 24, false);
      ground(104, HEIGHT - 24);
    } else if (pull == InputPull.PULL_UP || internal) {
      rail(104, 30, volts());
      resistor(104, 30, node, internal && pull != InputPull.PULL_UP);
    }
    sketch.circle(150, node, 3.5, "ink", "paper");
  }

  private String volts() {
    Double volts = endstop.voltage();
    return volts == null ? "+" : "+" + Shown.number(volts) + " V";
  }

  private void resistor(double x, double from, double to, boolean dashed) {
    double middle = (from + to) / 2;
    sketch.line(x, from, x, middle - 13, "ink");
    sketch.line(x, middle + 13, x, to, "ink");
    var body = sketch.box(x - 5, middle - 13, 10, 26, "ink", "paper");
    if (dashed) {
      body.getStyleClass().add("dashed");
    }
  }

  private void rail(double x, double y, String words) {
    sketch.line(x - 9, y, x + 9, y, "ink");
    sketch.text(words, x, y - 5, 0.5, "small");
  }

  private void ground(double x, double y) {
    sketch.line(x - 9, y, x + 9, y, "ink");
    sketch.line(x - 6, y + 4, x + 6, y + 4, "ink");
    sketch.line(x - 3, y + 8, x + 3, y + 8, "ink");
  }

  private Boolean closed() {
    Contact contact = endstop.contact();
    return contact == null ? null : (contact == Contact.NC) != touched;
  }

  /** Two wires: from the input through the contact to 0 V, or to the supply with a pull-down. */
  private void plainSwitch(boolean toSupply) {
    double node = 92;
    sketch.line(153.5, node, 190, node, "ink");
    contact(190, node);
    double end = 190 + ContactSign.LENGTH;
    sketch.line(end, node, 262, node, "ink");
    if (toSupply) {
      sketch.line(262, node, 262, 42, "ink");
      rail(262, 42, volts());
    } else {
      sketch.line(262, node, 262, HEIGHT - 40, "ink");
      ground(262, HEIGHT - 40);
      sketch.text("0 V", 278, HEIGHT - 33, 0, "small");
    }
    sketch.text(contactWords(), 207, node + 24, 0.5, "small");
    if (touched) {
      touch(207, node - 34);
    }
  }

  private void touch(double x, double y) {
    sketch.line(x, y, x, y + 16, "live");
    sketch.polyline("live", x - 4, y + 11, x, y + 16, x + 4, y + 11);
  }

  private String contactWords() {
    return endstop.contact() == null
        ? Texts.of("circuit.contact")
        : Texts.of("circuit.contact." + endstop.contact().word());
  }

  private void contact(double x, double y) {
    String style = closed() == null ? "ink" : "live";
    ContactSign.across(sketch, x, y, endstop.contact(), closed(), style);
  }

  /** Three wires: supply, output and 0 V; the output sinks (NPN) or sources (PNP). */
  private void sensor(boolean sinks) {
    double node = 92;
    sketch.box(186, 44, 96, HEIGHT - 88, "ink", "paper");
    sketch.text(endstop.sensor().word().toUpperCase(java.util.Locale.ROOT), 234, 60, 0.5, "strong");
    sketch.line(153.5, node, 200, node, "ink");
    contact(200, node);
    double end = 200 + ContactSign.LENGTH;
    double to = sinks ? HEIGHT - 60 : 66;
    sketch.polyline("ink", end, node, 264, node, 264, to);
    sketch.line(264, to, 296, to, "ink");
    if (sinks) {
      ground(296, to);
      sketch.text("0 V", 296, to + 22, 0.5, "small");
    } else {
      rail(296, to, volts());
    }
    sketch.text(contactWords(), 222, node + 24, 0.5, "small");
    sketch.text(Texts.of("circuit.black"), 170, node - 6, 0.5, "small");
    if (touched) {
      touch(234, 22);
    }
  }
}
