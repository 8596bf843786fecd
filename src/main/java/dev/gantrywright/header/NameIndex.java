package dev.gantrywright.header;

import java.util.Arrays;

/** The macro names that a file defines or has commented out, and where, without a string a name. */
final class NameIndex {
  private final SourceFile file;
  private final int[] slots;

  NameIndex(SourceFile file) {
    this.file = file;
    DirectiveTable table = file.table();
    int definitions = 0;
    for (int row = 0; row < table.size(); row++) {
      definitions += isDefinition(row) ? 1 : 0;
    }
    int size = Integer.highestOneBit(Math.max(8, definitions * 2)) * 2;
    slots = new int[size];
    Arrays.fill(slots, -1);
    for (int row = 0; row < table.size(); row++) {
      if (isDefinition(row)) {
        int i = slot(hash(row));
        while (slots[i] >= 0) {
          i = (i + 1) & (slots.length - 1);
        }
        slots[i] = row;
      }
    }
  }

  private boolean isDefinition(int row) {
    DirectiveTable table = file.table();
    DirectiveKind kind = table.kind(row);
    return (kind == DirectiveKind.DEFINE || kind == DirectiveKind.OFF_DEFINE)
        && table.nameEnd(row) > table.nameStart(row);
  }

  private int hash(int row) {
    DirectiveTable table = file.table();
    return table.has(row, DirectiveTable.UNUSUAL_NAME)
        ? file.name(row).hashCode()
        : table.hash(row);
  }

  private int slot(int hash) {
    int h = hash * 0x9E3779B9;
    return (h ^ (h >>> 15)) & (slots.length - 1);
  }

  boolean contains(String name) {
    return rows(name).length > 0;
  }

  /** The rows that define the name, in file order. */
  int[] rows(String name) {
    int[] out = new int[2];
    int count = 0;
    int i = slot(name.hashCode());
    while (slots[i] >= 0) {
      if (hash(slots[i]) == name.hashCode() && file.name(slots[i]).equals(name)) {
        out = count == out.length ? Arrays.copyOf(out, count * 2) : out;
        out[count++] = slots[i];
      }
      i = (i + 1) & (slots.length - 1);
    }
    out = Arrays.copyOf(out, count);
    Arrays.sort(out);
    return out;
  }
}
