package dev.gantrywright.header;

import java.util.Arrays;

/** Where the physical lines of a file start; LF, CR LF and a lone CR each end a line. */
final class LineIndex {
  private final int[] starts;

  private LineIndex(int[] starts) {
    this.starts = starts;
  }

  static LineIndex of(byte[] bytes) {
    int[] starts = new int[Math.max(16, bytes.length / 32)];
    int count = 1;
    for (int i = 0; i < bytes.length; i++) {
      int c = bytes[i];
      if (c == '\n' || c == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n')) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
    return new LineIndex(Arrays.copyOf(starts, count));
  }

  /** That of a file in which one definition has another text. */
  LineIndex moved(OneDefinition difference) {
    return new LineIndex(difference.moved(starts, starts.length));
  }

  /** The line of an offset, counted from 1, without an index. */
  static int countedLineOf(byte[] bytes, int offset) {
    int line = 1;
    for (int i = 0; i < offset; i++) {
      int c = bytes[i];
      if (c == '\n' || c == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n')) {
        line++;
      }
    }
    return line;
  }

  /** The line, counted from 1, that holds the offset. */
  int lineOf(int offset) {
    int found = Arrays.binarySearch(starts, offset);
    return found >= 0 ? found + 1 : -found - 1;
  }

  /** The offset of the first byte of a line counted from 1. */
  int start(int line) {
    return starts[line - 1];
  }

  int count() {
    return starts.length;
  }
}
