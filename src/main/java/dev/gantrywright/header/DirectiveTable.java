package dev.gantrywright.header;

import java.util.Arrays;

/**
 * All directives of one file in a flat array, six numbers each, so that a large header costs less
 * than its own bytes and no object a line.
 */
final class DirectiveTable {
  /** The name holds a splice, a universal character name or a byte of a UTF-8 sequence. */
  static final int UNUSUAL_NAME = 1 << 8;

  static final int FUNCTION_LIKE = 1 << 9;

  /** A commented-out definition in a block comment rather than behind two slashes. */
  static final int IN_BLOCK_COMMENT = 1 << 10;

  /** The text behind the name has no comment, literal or splice. */
  static final int PLAIN = 1 << 11;

  private static final int WIDTH = 6;

  /** Of a row's numbers those from the second on that are offsets. */
  private static final int OFFSETS = 4;

  private int[] rows;
  private int size;

  DirectiveTable(int expected) {
    rows = new int[Math.max(8, expected) * WIDTH];
  }

  int add(DirectiveKind kind, int flags, int start, int nameStart, int nameEnd, int end, int hash) {
    int at = size * WIDTH;
    if (at == rows.length) {
      rows = Arrays.copyOf(rows, rows.length * 2);
    }
    rows[at] = kind.ordinal() | flags;
    rows[at + 1] = start;
    rows[at + 2] = nameStart;
    rows[at + 3] = nameEnd;
    rows[at + 4] = end;
    rows[at + 5] = hash;
    return size++;
  }

  /** Gives back room that was reserved but not used, where it is worth a copy. */
  void trim() {
    if (size * WIDTH < rows.length / 4 * 3) {
      rows = Arrays.copyOf(rows, size * WIDTH);
    }
  }

  /** The table of a file in which one definition has another text. */
  DirectiveTable moved(OneDefinition difference) {
    DirectiveTable out = new DirectiveTable(size);
    System.arraycopy(rows, 0, out.rows, 0, size * WIDTH);
    out.size = size;
    int at = difference.row() * WIDTH;
    int by = rows[at + 1];
    int[] now = difference.definition().table().rows;
    out.rows[at] = now[0];
    for (int i = 1; i <= OFFSETS; i++) {
      out.rows[at + i] = now[i] + by;
    }
    for (int row = at + WIDTH; row < size * WIDTH; row += WIDTH) {
      for (int i = 1; i <= OFFSETS; i++) {
        out.rows[row + i] += difference.growth();
      }
    }
    return out;
  }

  int size() {
    return size;
  }

  /** The last row that starts before an offset, or -1. */
  int rowBefore(int offset) {
    int low = 0;
    int high = size;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (start(middle) < offset) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low - 1;
  }

  DirectiveKind kind(int i) {
    return DirectiveKind.of(rows[i * WIDTH] & 0xff);
  }

  boolean has(int i, int flag) {
    return (rows[i * WIDTH] & flag) != 0;
  }

  /** Offset of the {@code #}, or of the comment mark of a commented-out definition. */
  int start(int i) {
    return rows[i * WIDTH + 1];
  }

  /** Offset of the name of a macro; of what follows the keyword elsewhere. */
  int nameStart(int i) {
    return rows[i * WIDTH + 2];
  }

  int nameEnd(int i) {
    return rows[i * WIDTH + 3];
  }

  /** Offset after the last byte of the logical line, its line end not included. */
  int end(int i) {
    return rows[i * WIDTH + 4];
  }

  /** Hash of the macro name, equal to {@link String#hashCode} of its ISO-8859-1 text. */
  int hash(int i) {
    return rows[i * WIDTH + 5];
  }

  /** For a conditional: the next directive of its chain, or the table's size if there is none. */
  int link(int i) {
    return rows[i * WIDTH + 5];
  }

  void setLink(int i, int to) {
    rows[i * WIDTH + 5] = to;
  }
}
