package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.Parity;
import dev.gantrywright.machine.Serial;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** One frame on the serial line: start bit, data bits, parity, stop bit, and how long it takes. */
public final class SerialFrame extends Region {
  private static final double HEIGHT = 92;

  /** Letter U, 0x55: every data bit differs from the one before. */
  private static final int SHOWN = 0x55;

  private final Sketch sketch = new Sketch();

  public SerialFrame() {
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
  }

  public void show(Serial serial) {
    sketch.clear();
    int data = serial.dataBits() == null ? 8 : serial.dataBits();
    boolean parity = serial.parity() != null && serial.parity() != Parity.NONE;
    double bit = 34;
    double x = 30;
    double level = 14;
    sketch.line(0, level, x, level, "ink");
    x = bit(x, bit, level, 48, Texts.of("serial.start"));
    level = 48;
    int ones = 0;
    for (int i = 0; i < data; i++) {
      boolean one = (SHOWN >> (i % 8) & 1) == 1;
      ones += one ? 1 : 0;
      double next = one ? 14 : 48;
      x = bit(x, bit, level, next, Integer.toString(i));
      level = next;
    }
    if (parity) {
      boolean high = ones % 2 == (serial.parity() == Parity.EVEN ? 1 : 0);
      x = bit(x, bit, level, high ? 14 : 48, Texts.of("serial.parity"));
      level = high ? 14 : 48;
    }
    x = bit(x, bit, level, 14, Texts.of("serial.stop"));
    sketch.line(x, 14, x + 30, 14, "ink");
    int bits = 2 + data + (parity ? 1 : 0);
    String words =
        serial.baud() == null
            ? Texts.of("serial.frame", bits)
            : Texts.of(
                "serial.frameTime",
                bits,
                Shown.rough(1e6 * bits / serial.baud()),
                Shown.grouped(Math.floor((double) serial.baud() / bits)));
    sketch.text(words, 0, HEIGHT - 6, 0, "small");
    setAccessibleText(words);
  }

  private double bit(double x, double width, double before, double level, String name) {
    if (before != level) {
      sketch.line(x, before, x, level, "ink");
    }
    sketch.line(x, level, x + width, level, "thick");
    sketch.line(x + width, 10, x + width, 54, "hair");
    sketch.text(name, x + width / 2, 68, 0.5, "quiet");
    return x + width;
  }
}
