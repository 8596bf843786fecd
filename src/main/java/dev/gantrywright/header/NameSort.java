package dev.gantrywright.header;

import java.util.Arrays;

/**
 * Sorts symbols by the bytes of their names, eight bytes at a time: macro names of a device header
 * share long beginnings, which a comparison from the front would read again and again.
 */
final class NameSort {
  private static final int[] GAPS = {
    1_600_000, 701_000, 301_000, 132_000, 57_000, 24_000, 10_000, 4_300, 1_750, 701, 301, 132, 57,
    23, 10, 4, 1
  };

  private final MacroTable.Symbol[] symbols;
  private final long[] keys;

  /** Indices of the symbols: moving a number is cheaper than moving a reference. */
  private final int[] order;

  private int[] work = new int[48];
  private int todo;

  private NameSort(MacroTable.Symbol[] symbols) {
    this.symbols = symbols;
    this.keys = new long[symbols.length];
    this.order = new int[symbols.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
  }

  /** The symbols in the order of their names. */
  static MacroTable.Symbol[] sorted(MacroTable.Symbol[] symbols) {
    NameSort sort = new NameSort(symbols);
    sort.put(0, symbols.length, 0);
    while (sort.todo > 0) {
      sort.todo -= 3;
      sort.group(sort.work[sort.todo], sort.work[sort.todo + 1], sort.work[sort.todo + 2]);
    }
    MacroTable.Symbol[] out = new MacroTable.Symbol[symbols.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = symbols[sort.order[i]];
    }
    return out;
  }

  private void put(int low, int high, int depth) {
    if (todo == work.length) {
      work = Arrays.copyOf(work, todo * 2);
    }
    work[todo++] = low;
    work[todo++] = high;
    work[todo++] = depth;
  }

  /** Sorts a range by the eight bytes at a depth; ranges that are equal there are left to do. */
  private void group(int low, int high, int depth) {
    for (int i = low; i < high; i++) {
      keys[i] = key(symbols[order[i]], depth);
    }
    byKey(low, high);
    int start = low;
    for (int end = low + 1; end <= high; end++) {
      if (end == high || keys[end] != keys[start]) {
        if (end - start > 1 && (keys[start] & 0xff) != 0) {
          put(start, end, depth + 8);
        }
        start = end;
      }
    }
  }

  /** Eight bytes of the name as a signed number that sorts as they do; zeros behind its end. */
  private static long key(MacroTable.Symbol s, int depth) {
    byte[] t = s.text;
    int from = s.from + depth;
    int left = s.length - depth;
    if (left >= 8) {
      int high = t[from] << 24 | (t[from + 1] & 0xff) << 16 | (t[from + 2] & 0xff) << 8;
      int low = t[from + 4] << 24 | (t[from + 5] & 0xff) << 16 | (t[from + 6] & 0xff) << 8;
      long both = (long) (high | t[from + 3] & 0xff) << 32;
      return (both | (low | t[from + 7] & 0xff) & 0xFFFF_FFFFL) ^ Long.MIN_VALUE;
    }
    long key = 0;
    for (int i = 0; i < 8; i++) {
      key = key << 8 | (i < left ? t[from + i] & 0xff : 0);
    }
    return key ^ Long.MIN_VALUE;
  }

  /**
   * Shell's sort with the gaps of Ciura (2001, Best Increments for the Average Case of Shellsort):
   * one small loop, which a cold virtual machine runs faster than a cleverer one.
   */
  private void byKey(int low, int high) {
    for (int gap : GAPS) {
      if (gap < high - low) {
        pass(keys, order, low, high, gap);
      }
    }
  }

  private static void pass(long[] keys, int[] order, int low, int high, int gap) {
    int first = low + gap;
    for (int i = first; i < high; i++) {
      long key = keys[i];
      int j = i;
      if (keys[j - gap] > key) {
        int moved = order[i];
        do {
          keys[j] = keys[j - gap];
          order[j] = order[j - gap];
          j -= gap;
        } while (j >= first && keys[j - gap] > key);
        keys[j] = key;
        order[j] = moved;
      }
    }
  }
}
