package dev.gantrywright.ui.state;

import dev.gantrywright.link.LogEntry.Direction;
import dev.gantrywright.link.LogText;
import java.util.AbstractList;
import java.util.Arrays;
import java.util.RandomAccess;

/**
 * Lines of a log as rows of text, oldest first. A row is put into words when it is looked at: of
 * the thousands that a fast machine says between two pictures a list shows two dozen.
 */
public final class LogRows extends AbstractList<String> implements RandomAccess {
  /** A row shows no more characters; to set more in type takes longer than a picture may. */
  private static final int LONGEST = 400;

  /** No rows. */
  public static final LogRows NONE = new Newest(1).rows();

  private final Newest lines;

  private LogRows(Newest lines) {
    this.lines = lines;
  }

  @Override
  public int size() {
    return lines.count;
  }

  @Override
  public String get(int row) {
    if (row < 0 || row >= lines.count) {
      throw new IndexOutOfBoundsException(row);
    }
    String text =
        LogText.of(
            lines.sent[row] ? Direction.SENT : Direction.RECEIVED,
            lines.nanos[row],
            lines.text,
            row == 0 ? 0 : lines.ends[row - 1],
            lines.ends[row]);
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST) + "…";
  }

  /** Gathers lines and keeps the newest. */
  static final class Newest {
    private final int most;
    private byte[] text = new byte[0];
    private int[] ends = new int[0];
    private long[] nanos = new long[0];
    private boolean[] sent = new boolean[0];
    private int count;

    /**
     * @param most how many lines stay
     */
    Newest(int most) {
      this.most = most;
    }

    void clear() {
      count = 0;
    }

    /** Takes a line; of its bytes no more than a row shows. */
    void add(Direction direction, long at, byte[] bytes, int from, int to) {
      if (count == 2 * most) {
        forget(most);
      }
      int length = Math.min(to - from, LONGEST);
      int end = end();
      grow(end + length);
      System.arraycopy(bytes, from, text, end, length);
      ends[count] = end + length;
      nanos[count] = at;
      sent[count] = direction == Direction.SENT;
      count++;
    }

    /** The newest lines, apart from what is added later. */
    LogRows rows() {
      Newest kept = new Newest(most);
      int first = Math.max(0, count - most);
      int from = first == 0 ? 0 : ends[first - 1];
      kept.text = Arrays.copyOfRange(text, from, Math.max(from, end()));
      kept.ends = Arrays.copyOfRange(ends, first, count);
      for (int i = 0; i < kept.ends.length; i++) {
        kept.ends[i] -= from;
      }
      kept.nanos = Arrays.copyOfRange(nanos, first, count);
      kept.sent = Arrays.copyOfRange(sent, first, count);
      kept.count = count - first;
      return new LogRows(kept);
    }

    private int end() {
      return count == 0 ? 0 : ends[count - 1];
    }

    private void forget(int lines) {
      int from = ends[lines - 1];
      System.arraycopy(text, from, text, 0, end() - from);
      for (int i = lines; i < count; i++) {
        ends[i - lines] = ends[i] - from;
        nanos[i - lines] = nanos[i];
        sent[i - lines] = sent[i];
      }
      count -= lines;
    }

    private void grow(int bytes) {
      if (bytes > text.length) {
        text = Arrays.copyOf(text, Math.max(bytes, 2 * text.length));
      }
      if (count == ends.length) {
        int room = Math.min(2 * most, Math.max(64, 2 * count));
        ends = Arrays.copyOf(ends, room);
        nanos = Arrays.copyOf(nanos, room);
        sent = Arrays.copyOf(sent, room);
      }
    }
  }
}
