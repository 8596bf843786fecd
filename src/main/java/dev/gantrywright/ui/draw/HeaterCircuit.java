package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.HeaterOutput;
import dev.gantrywright.rules.Context;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.HeaterFigures;
import dev.gantrywright.ui.state.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/**
 * The circuit of one heater, with symbols as diagrams after IEC 60617 draw them (from memory):
 * supply, fuse, what switches it, the heater; and beside it what flows and what share of each
 * rating that is. An output is drawn as a transistor in the return wire (common practice, no
 * published source).
 */
public final class HeaterCircuit extends Region {
  private static final double HEIGHT = 196;
  private static final double TOP = 34;
  private static final double RETURN = 104;
  private static final double COLUMN = 376;

  private final Sketch sketch = new Sketch();
  private final List<String> words = new ArrayList<>();
  private double row;

  public HeaterCircuit() {
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
  }

  public void show(Heater heater, HeaterFigures figures, Optional<BoardSheet> sheet) {
    sketch.clear();
    words.clear();
    supply(figures);
    String pin =
        sheet
            .map(each -> each.outputs().get(heater.output()))
            .map(HeaterOutput::pin)
            .orElse(Texts.of("circuit.pin"));
    if (figures.relay()) {
      relay(pin, heater);
    } else {
      transistor(pin, heater);
    }
    load(heater, figures);
    figures(heater, figures);
    setAccessibleText(Texts.of("heater.circuit.words", String.join("; ", words)));
  }

  /** From the supply through the fuse. */
  private void supply(HeaterFigures figures) {
    String volts = figures.volts() == null ? "" : Shown.number(figures.volts()) + " V";
    sketch.text(figures.mains() ? volts + " ~" : "+" + volts, 2, TOP - 12, 0, "small");
    sketch.circle(10, TOP, 3.5, "ink", "paper");
    sketch.line(13.5, TOP, 34, TOP, "ink");
    // A fuse.
    sketch.box(34, TOP - 7, 40, 14, "ink", "paper");
    sketch.line(34, TOP, 74, TOP, "fine");
    sketch.text(
        figures.fuseAmps() == null
            ? Texts.of("heater.circuit.fuse")
            : Texts.of("heater.circuit.fuse") + " " + Shown.number(figures.fuseAmps()) + " A",
        54,
        TOP + 24,
        0.5,
        "small");
  }

  /** The board's output in the return wire. */
  private void transistor(String pin, Heater heater) {
    sketch.box(104.5, 0.5, 170, HEIGHT - 1, "hair", "paper");
    sketch.text(Texts.of("circuit.board"), 264, 18, 1, "quiet");
    sketch.line(74, TOP, 262, TOP, "ink");
    sketch.circle(265.5, TOP, 3.5, "ink", "paper");
    sketch.circle(265.5, RETURN, 3.5, "ink", "paper");
    sketch.text(output(heater), 256, RETURN - 10, 1, "small");
    // An insulated-gate field-effect transistor, enhancement type.
    double gate = 198;
    double channel = 205;
    sketch.box(112, RETURN + 4, 52, 32, "ink", "paper");
    sketch.text(pin, 138, RETURN + 24, 0.5, "small");
    sketch.line(164, RETURN + 20, gate, RETURN + 20, "ink");
    sketch.line(gate, RETURN + 6, gate, RETURN + 34, "ink");
    for (int part = 0; part < 3; part++) {
      sketch.line(channel, RETURN + 4 + part * 12, channel, RETURN + 12 + part * 12, "thick");
    }
    sketch.polyline("ink", channel, RETURN + 8, 226, RETURN + 8, 226, RETURN, 262, RETURN);
    sketch.polyline("ink", channel, RETURN + 20, 226, RETURN + 20, 226, RETURN + 32);
    sketch.polygon(
        "solid", channel + 2, RETURN + 20, channel + 9, RETURN + 16, channel + 9, RETURN + 24);
    sketch.polyline("ink", channel, RETURN + 32, 226, RETURN + 32, 226, RETURN + 56);
    ground(226, RETURN + 56);
    sketch.line(269, TOP, 316, TOP, "ink");
    sketch.line(269, RETURN, 316, RETURN, "ink");
  }

  /** The board drives a relay; its contact stands in a circuit apart from the board. */
  private void relay(String pin, Heater heater) {
    sketch.box(0.5, RETURN + 22.5, 128, HEIGHT - RETURN - 23, "hair", "paper");
    sketch.text(Texts.of("circuit.board"), 8, HEIGHT - 8, 0, "quiet");
    sketch.box(12, RETURN + 34, 52, 32, "ink", "paper");
    sketch.text(pin, 38, RETURN + 54, 0.5, "small");
    sketch.text(output(heater), 70, RETURN + 44, 0, "small");
    sketch.line(64, RETURN + 50, 170, RETURN + 50, "ink");
    // The operating coil of a relay, and its make contact.
    sketch.box(170, RETURN + 38, 40, 24, "ink", "paper");
    sketch.line(210, RETURN + 50, 240, RETURN + 50, "ink");
    ground(240, RETURN + 50);
    var link = sketch.line(190, RETURN + 38, 190, TOP - 8, "fine");
    link.getStyleClass().add("dashed");
    sketch.text(
        Texts.of("heater.circuit.relay")
            + (heater.relayAmps() == null ? "" : " " + Shown.number(heater.relayAmps()) + " A"),
        220,
        RETURN + 76,
        0.5,
        "small");
    sketch.line(74, TOP, 174, TOP, "ink");
    sketch.line(174, TOP, 204, TOP - 15, "ink");
    sketch.line(206, TOP, 316, TOP, "ink");
    sketch.line(250, RETURN, 316, RETURN, "ink");
    sketch.circle(246.5, RETURN, 3.5, "ink", "paper");
    sketch.text(heater.volts() != null && mains(heater) ? "N" : "0 V", 232, RETURN + 4, 1, "small");
  }

  private static boolean mains(Heater heater) {
    return heater.volts() >= Context.MAINS_VOLTS;
  }

  /** The heater itself: a resistor; with mains, whether its metal is earthed. */
  private void load(Heater heater, HeaterFigures figures) {
    sketch.line(316, TOP, 316, TOP + 14, "ink");
    sketch.box(308, TOP + 14, 16, 42, "ink", "paper");
    sketch.line(316, TOP + 56, 316, RETURN, "ink");
    // On the free side: the earth of a mains heater stands right of it.
    boolean left = figures.mains();
    sketch.text(
        Texts.of("heater.circuit.heater"), left ? 304 : 330, TOP + 40, left ? 1 : 0, "small");
    if (figures.mains()) {
      boolean earthed = Boolean.TRUE.equals(heater.earthed());
      sketch.line(324, TOP + 35, 344, TOP + 35, earthed ? "ink" : "wrong");
      ground(344, TOP + 35);
    }
  }

  private void ground(double x, double y) {
    sketch.line(x - 9, y, x + 9, y, "ink");
    sketch.line(x - 6, y + 4, x + 6, y + 4, "ink");
    sketch.line(x - 3, y + 8, x + 3, y + 8, "ink");
  }

  private static String output(Heater heater) {
    return heater.output() == null ? Texts.of("heater.circuit.output") : heater.output();
  }

  /** What flows, and the share of each rating. */
  private void figures(Heater heater, HeaterFigures figures) {
    row = 20;
    if (figures.amps() == null) {
      line(Texts.of("heater.circuit.unknown"), "quiet");
      return;
    }
    line(Texts.of("heater.circuit.ohms", Shown.rough(figures.ohms())), "small");
    line(Texts.of("heater.circuit.amps", Shown.rough(figures.amps())), "strong");
    line(Texts.of("heater.circuit.watts", Shown.rough(figures.watts())), "strong");
    row += 6;
    share(output(heater), figures, figures.outputAmps());
    share(Texts.of("heater.circuit.relay"), figures, figures.relayAmps());
    share(Texts.of("heater.circuit.fuse"), figures, figures.fuseAmps());
    row += 6;
    line(Texts.of("heater.circuit.source"), "quiet");
    line(Texts.of("heater.circuit.ratings"), "quiet");
  }

  private void share(String name, HeaterFigures figures, Double rating) {
    figures
        .share(rating)
        .ifPresent(
            share ->
                line(
                    Texts.of(
                        figures.over(rating) ? "heater.circuit.over" : "heater.circuit.share",
                        name,
                        share,
                        Shown.number(rating)),
                    figures.over(rating) ? "error-text" : "small"));
  }

  private void line(String text, String style) {
    sketch.text(text, COLUMN, row, 0, style);
    words.add(text);
    row += 19;
  }
}
