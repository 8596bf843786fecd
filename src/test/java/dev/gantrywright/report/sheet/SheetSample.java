package dev.gantrywright.report.sheet;

import java.util.ArrayList;
import java.util.List;

/** A sheet that asks much of the page: long names without a blank, twelve endstops, every block. */
final class SheetSample {
  static final String LONG =
      "Guillemot-of-the-Harbour-Street-Workshop-with-the-enlarged-bed-and-both-extruders_second-run";

  private static final int ENDS = 12;

  private SheetSample() {}

  static Sheet sheet() {
    List<Section> sections = new ArrayList<>();
    sections.add(
        new Section(
            "cautions",
            "Before you open the machine",
            List.of(
                new Block.Caution("WARNING", "Mains can kill.", "Pull the plug.", "Licensed only."),
                new Block.Caution("NOTICE", "Cards fail.", "Eject first.", ""))));
    sections.add(
        new Section(
            "odd",
            "Odd texts <b>&amp; \"quotes\"",
            List.of(
                new Block.Words("Ω µ ° ² ± → – “quoted” <script>alert(1)</script> & so on"),
                new Block.Missing("No build is on record.", "Build it."),
                new Block.Facts(
                    List.of(
                        new Block.Fact("Hash", Cell.of("0123456789abcdef".repeat(4)), true),
                        new Block.Fact(LONG, new Cell(LONG, Sign.WARNING), false))))));
    sections.add(new Section("touch", "Touch test", List.of(matrix(), strips())));
    sections.add(new Section("heat", "Heat-up", List.of(curve())));
    return new Sheet(
        LONG,
        LONG + " · STM32F405RG · " + LONG,
        "2026-03-02",
        "Ida Marsh",
        List.of(new Block.Fact("Check", new Cell("6 errors", Sign.ERROR), false)),
        sections);
  }

  private static List<String> ends() {
    List<String> ends = new ArrayList<>();
    for (int i = 0; i < ENDS; i++) {
      ends.add(i % 3 == 0 ? "auxiliary" + i + "Max" : "x" + i + "Min");
    }
    return ends;
  }

  private static Block.Table matrix() {
    List<Block.Column> columns = new ArrayList<>();
    columns.add(new Block.Column("Pressed", Block.Set.TEXT, 3));
    ends().forEach(end -> columns.add(new Block.Column(end, Block.Set.TEXT, 2)));
    List<List<Cell>> rows = new ArrayList<>();
    for (String pressed : ends()) {
      List<Cell> row = new ArrayList<>();
      row.add(Cell.of(pressed));
      for (String seen : ends()) {
        row.add(pressed.equals(seen) ? new Cell("yes", Sign.FINE) : Cell.of("still"));
      }
      rows.add(row);
    }
    return new Block.Table("Which endstop answered to which press", columns, rows);
  }

  private static Block.Strips strips() {
    List<Block.Strip> strips = new ArrayList<>();
    for (String end : ends()) {
      double from = strips.size();
      strips.add(
          new Block.Strip(
              end,
              List.of(new Block.Span(from, from + 0.5)),
              "triggered 1 time, first at " + from));
    }
    return new Block.Strips(13, strips);
  }

  /** More readings than are drawn, and a model beside them. */
  private static Block.Curve curve() {
    List<Block.Point> seen = new ArrayList<>();
    List<Block.Point> model = new ArrayList<>();
    for (int i = 0; i <= 2_400; i++) {
      double second = i * 0.5;
      double rise = 200 * (1 - Math.exp(-second / 250));
      seen.add(new Block.Point(second, 20 + rise + Math.sin(i * 0.7)));
      model.add(new Block.Point(second, 20 + rise));
    }
    return new Block.Curve("hotend: thick as recorded", "20 to 218 °C", seen, model);
  }

  /** Every text that must be found again, without the blanks at which a line may be broken. */
  static List<String> words() {
    List<String> words = new ArrayList<>(ends());
    words.addAll(
        List.of(
            LONG,
            "0123456789abcdef".repeat(4),
            "Ωµ°²±→–“quoted”<script>alert(1)</script>&soon",
            "Oddtexts<b>&amp;\"quotes\"",
            "Nobuildisonrecord.",
            "answered",
            "hotend:thickasrecorded",
            "still"));
    return words;
  }
}
