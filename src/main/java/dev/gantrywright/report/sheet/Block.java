package dev.gantrywright.report.sheet;

import java.util.List;

/** A part of a section. */
public sealed interface Block {
  /** Sentences. */
  record Words(String text) implements Block {}

  /** Something that has not been done, and what would do it. */
  record Missing(String what, String todo) implements Block {}

  /** Labels with their values. */
  record Facts(List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /**
   * One label with its value.
   *
   * @param code whether the value is a name, path or hash, to be set in the fixed-width type
   */
  record Fact(String label, Cell value, boolean code) {}

  /**
   * A table.
   *
   * @param caption what it shows
   * @param rows as many cells as there are columns
   */
  record Table(String caption, List<Column> columns, List<List<Cell>> rows) implements Block {
    public Table {
      columns = List.copyOf(columns);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /** How the texts of a column are set. */
  enum Set {
    TEXT,
    CODE,
    NUMBER
  }

  /**
   * One column.
   *
   * @param share its width in proportion to the others'
   */
  record Column(String head, Set set, int share) {}

  /**
   * What can hurt.
   *
   * @param word signal word after ANSI Z535.4
   * @param who who may do the work; empty where anyone may
   */
  record Caution(String word, String hazard, String avoid, String who) implements Block {}

  /**
   * Endstop states over time.
   *
   * @param seconds from the first sample to the last
   */
  record Strips(double seconds, List<Strip> strips) implements Block {
    public Strips {
      strips = List.copyOf(strips);
    }
  }

  /**
   * One endstop's line.
   *
   * @param triggered when it read triggered
   * @param words the same in words
   */
  record Strip(String name, List<Span> triggered, String words) {
    public Strip {
      triggered = List.copyOf(triggered);
    }
  }

  /**
   * A temperature over time.
   *
   * @param words the same in words, for who does not see it
   * @param seen as it was recorded, in order of time; two at least
   * @param model the same as a model has it; empty where there is none
   */
  record Curve(String caption, String words, List<Point> seen, List<Point> model) implements Block {
    public Curve {
      seen = List.copyOf(seen);
      model = List.copyOf(model);
    }
  }

  /** A temperature, °C, at a time, s. */
  record Point(double seconds, double celsius) {}

  /** A time within the strips, s. */
  record Span(double from, double to) {}
}
