package dev.gantrywright.header;

import java.util.Arrays;

/**
 * The macro names that a file defines or has commented out, and where, without a string a name.
 * Rows of one hash are a chain in file order, so that a name defined again and again costs no more.
 */
final class NameIndex {
  private final SourceFile file;

  /** The first row of each hash, or -1. */
  private final int[] slots;

  /** For each row the next one of its hash, or -1; null as long as no hash comes twice. */
  private int[] next;

  NameIndex(SourceFile file) {
    this.file = file;
    DirectiveTable table = file.table();
    int definitions = 0;
    for (int row = 0; row < table.size(); row++) {
      definitions += isDefinition(file.table(), row) ? 1 : 0;
    }
    int size = Integer.highestOneBit(Math.max(8, definitions * 2)) * 2;
    slots = new int[size];
    Arrays.fill(slots, -1);
    for (int row = table.size() - 1; row >= 0; row--) {
      if (isDefinition(file.table(), row)) {
        put(row);
      }
    }
  }

  private NameIndex(SourceFile file, int[] slots, int[] next) {
    this.file = file;
    this.slots = slots;
    this.next = next;
  }

  /** That of a file which has the same names in the same rows. */
  NameIndex of(SourceFile other) {
    return new NameIndex(other, slots, next);
  }

  private void put(int row) {
    int i = slot(hash(file, row));
    if (slots[i] >= 0) {
      if (next == null) {
        next = new int[file.table().size()];
        Arrays.fill(next, -1);
      }
      next[row] = slots[i];
    }
    slots[i] = row;
  }

  static boolean isDefinition(DirectiveTable table, int row) {
    DirectiveKind kind = table.kind(row);
    return (kind == DirectiveKind.DEFINE || kind == DirectiveKind.OFF_DEFINE)
        && table.nameEnd(row) > table.nameStart(row);
  }

  /** The hash of a definition's name as the index and the tables have it. */
  static int hash(SourceFile file, int row) {
    DirectiveTable table = file.table();
    return table.has(row, DirectiveTable.UNUSUAL_NAME)
        ? file.name(row).hashCode()
        : table.hash(row);
  }

  /** The slot that holds the hash, or the free one where it would go. */
  private int slot(int hash) {
    int h = hash * 0x9E3779B9;
    int i = (h ^ (h >>> 15)) & (slots.length - 1);
    while (slots[i] >= 0 && hash(file, slots[i]) != hash) {
      i = (i + 1) & (slots.length - 1);
    }
    return i;
  }

  private int after(int row) {
    return next == null ? -1 : next[row];
  }

  boolean contains(String name) {
    return first(name) >= 0;
  }

  private int first(String name) {
    int row = slots[slot(name.hashCode())];
    while (row >= 0 && !file.name(row).equals(name)) {
      row = after(row);
    }
    return row;
  }

  /** The rows that define the name, in file order. */
  int[] rows(String name) {
    int[] out = new int[2];
    int count = 0;
    for (int row = first(name); row >= 0; row = after(row)) {
      if (file.name(row).equals(name)) {
        out = count == out.length ? Arrays.copyOf(out, count * 2) : out;
        out[count++] = row;
      }
    }
    return Arrays.copyOf(out, count);
  }
}
