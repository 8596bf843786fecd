package dev.gantrywright.ui.draw;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.DriverPlace;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.Node;
import javafx.scene.control.Tooltip;

/** The machine from the side: height, hot end, bed, and beside it board and supply. */
final class FrameFromSide {
  private final PlanParts parts;
  private final Sketch sketch;

  FrameFromSide(PlanParts parts) {
    this.parts = parts;
    this.sketch = parts.sketch;
  }

  void draw(double x, double y, double width, double height) {
    double right = x + width * 0.57;
    double left = x + 14;
    double bottom = y + height - 18;
    sketch.line(left, y, left, bottom, "ink");
    sketch.line(right, y, right, bottom, "ink");
    double beam = y + height * 0.3;
    sketch.line(left, beam, right, beam, "thick");
    double bed = bottom - 16;
    sketch.line(left + 12, bed, right - 12, bed, "thick");
    // Right of the words of both Z ends.
    double nozzle = left + (right - left) * 0.7;
    sketch.box(nozzle - 11, beam - 8, 22, 16, "ink", "paper");
    sketch.polygon("solid", nozzle - 5, beam + 20, nozzle + 5, beam + 20, nozzle, beam + 28);
    parts.heater("hotend", nozzle - 9, beam + 8, 18, 12);
    parts.heater("bed", nozzle - 24, bed + 3, 48, 10);
    parts.endstop("zMin", left + 6, bed - 26, left + 6 + ContactSign.LENGTH + 4, bed - 22, 0);
    if (height > 120) {
      parts.endstop("zMax", left + 6, y + 12, left + 6 + ContactSign.LENGTH + 4, y + 16, 0);
    }
    parts.motor("z", right, bottom - 4);
    sketch.text(parts.span("z"), (left + right) / 2, y + height, 0.5, "quiet");
    electrics(right + 20, y, x + width - right - 20, height);
  }

  /** Which axis sits where, or why that is not known. */
  private String told(boolean sheet) {
    StringBuilder lines =
        new StringBuilder(Texts.of(sheet ? "plan.drivers" : "plan.drivers.noSheet"));
    for (DriverPlace place : parts.content.drivers()) {
      String axes =
          place.axes().isEmpty()
              ? Texts.of("board.free")
              : String.join(
                  ", ",
                  place.axes().stream().map(axis -> PlaceNames.part("axes." + axis)).toList());
      lines.append("\n").append(place.name()).append(": ").append(axes);
    }
    return lines.toString();
  }

  private void electrics(double x, double y, double width, double height) {
    PrinterProfile profile = parts.profile();
    double boardHeight = height * 0.55;
    sketch.box(x, y, width, boardHeight, "ink", "paper");
    String name = parts.content.boardName();
    boolean sheet = !name.isEmpty();
    double middleLine = y + boardHeight * 0.62;
    int rows = middleLine - 10 - y - 5 >= 2 * 15 ? 2 : 1;
    new DriverSockets(sketch).draw(parts.content.drivers(), x + 6, y + 5, width - 34, rows, sheet);
    sketch.box(x + width - 22, y + 6, 14, 14, "solid");
    String board = FittedWords.of(sheet ? name : Texts.of("plan.noSheet"), width - 12, false);
    sketch.text(board, x + width / 2, middleLine, 0.5);
    String mcu = profile.board().mcu();
    String part = mcu == null ? "" : FittedWords.of(mcu, width - 12, false);
    sketch.text(part, x + width / 2, middleLine + 15, 0.5, "quiet");
    Node hit = parts.target("board", x, y, width, boardHeight);
    Tooltip.install(hit, new Tooltip(told(sheet)));
    parts.mark("board", x + width - 6, y - 6);
    double feed = y + boardHeight + 14;
    sketch.line(x + width / 2, y + boardHeight, x + width / 2, feed, "ink");
    sketch.box(x + 8, feed, width - 16, height - boardHeight - 34, "ink", "paper");
    Double volts = profile.supply().volts();
    Double amps = profile.supply().amps();
    String words =
        (volts == null ? "supply" : Shown.number(volts) + " V")
            + (amps == null ? "" : " · " + Shown.number(amps) + " A");
    double middle = feed + (height - boardHeight - 34) / 2 + 4;
    sketch.text(words, x + width / 2, middle, 0.5, "small");
    parts.target("printer", x + 8, feed, width - 16, height - boardHeight - 34);
    parts.mark("printer", x + width - 14, feed - 6);
    parts.mark("serial", x - 6, y - 6);
  }
}
