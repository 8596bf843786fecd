package dev.gantrywright.header;

import java.util.IdentityHashMap;
import java.util.Map;

/** What an evaluation saw of each file: states of settings, outcomes of conditions. */
final class Visits {
  private static final byte DEAD = 0;
  private static final byte OPEN = 1;
  private static final byte LIVE = 2;
  private static final int MOST_TOLD = 128;

  /** One file. Rows are those of its directive table. */
  static final class Record {
    private final byte[] seen;
    private final Truth[] outcomes;
    private final Evidence[] evidence;
    private SourceFile includer;
    private int includeRow = -1;
    private byte entered;
    private Reasons.Told[] told;

    private Record(int rows) {
      seen = new byte[rows];
      outcomes = new Truth[rows];
      evidence = new Evidence[rows];
    }

    private Record(Record known, SourceFile includer) {
      seen = known.seen;
      outcomes = known.outcomes;
      evidence = known.evidence;
      told = known.told;
      entered = known.entered;
      includeRow = known.includeRow;
      this.includer = includer;
    }

    /** What was told last of a condition near this row; settings are asked for in file order. */
    Reasons.Told told(int row) {
      Reasons.Told[] known = told;
      Reasons.Told last = known == null ? null : known[row % MOST_TOLD];
      return last != null && last.row() == row ? last : null;
    }

    /** Threads may race to keep what they tell: it is immutable and equal. */
    Reasons.Told keep(Reasons.Told now) {
      Reasons.Told[] known = told;
      if (known == null) {
        known = new Reasons.Told[MOST_TOLD];
        told = known;
      }
      known[now.row() % MOST_TOLD] = now;
      return now;
    }

    State state(int row) {
      return seen[row] == LIVE ? State.LIVE : seen[row] == OPEN ? State.OPEN : State.DEAD;
    }

    /** How the condition of a row came out, or null if it was never evaluated. */
    Truth outcome(int row) {
      return outcomes[row];
    }

    Evidence evidence(int row) {
      return evidence[row] == null ? Evidence.NONE : evidence[row];
    }

    /** Whether the file was run at all. */
    boolean entered() {
      return entered != DEAD;
    }

    SourceFile includer() {
      return includer;
    }

    int includeRow() {
      return includeRow;
    }
  }

  private final Map<SourceFile, Record> records = new IdentityHashMap<>();

  synchronized Record of(SourceFile file) {
    Record known = records.get(file);
    if (known == null) {
      known = new Record(file.table().size());
      records.put(file, known);
    }
    return known;
  }

  /**
   * The same of files that stand for some of these, with the same rows.
   *
   * @param now what each file that changed has become
   */
  synchronized Visits moved(Map<SourceFile, SourceFile> now) {
    Visits out = new Visits();
    records.forEach(
        (file, record) -> {
          SourceFile includer = now.get(record.includer);
          Record kept = includer == null ? record : new Record(record, includer);
          out.records.put(now.getOrDefault(file, file), kept);
        });
    return out;
  }

  void enter(SourceFile file, SourceFile includer, int row, boolean open) {
    Record record = of(file);
    byte mark = open ? OPEN : LIVE;
    if (mark > record.entered) {
      record.entered = mark;
      record.includer = includer;
      record.includeRow = row;
    }
  }

  boolean entered(SourceFile file) {
    return of(file).entered != DEAD;
  }

  void see(Record record, int row, boolean open) {
    byte mark = open ? OPEN : LIVE;
    if (mark > record.seen[row]) {
      record.seen[row] = mark;
    }
  }

  /** Keeps the most favourable outcome of several passes. */
  void decide(Record record, int row, Truth truth, Evidence evidence) {
    Truth known = record.outcomes[row];
    if (known == null || rank(truth) > rank(known)) {
      record.outcomes[row] = truth;
      record.evidence[row] = evidence;
    }
  }

  private static int rank(Truth truth) {
    return truth == Truth.TRUE ? 2 : truth == Truth.UNKNOWN ? 1 : 0;
  }
}
