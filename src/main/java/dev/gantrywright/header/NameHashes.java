package dev.gantrywright.header;

import java.util.Arrays;

/** Hashes of macro names: where one is missing, so is the name. */
final class NameHashes {
  private static final int FREE = 0;

  private int[] slots = new int[64];
  private boolean zero;
  private int used;

  void add(int hash) {
    if (hash == FREE) {
      zero = true;
      return;
    }
    int i = slot(hash);
    if (slots[i] == FREE) {
      slots[i] = hash;
      if (++used * 2 > slots.length) {
        grow();
      }
    }
  }

  boolean mayHold(int hash) {
    return hash == FREE ? zero : slots[slot(hash)] == hash;
  }

  /** Adds every name that a file defines or has commented out. */
  void addDefinitions(SourceFile file) {
    DirectiveTable table = file.table();
    for (int row = 0; row < table.size(); row++) {
      if (NameIndex.isDefinition(table, row)) {
        add(NameIndex.hash(file, row));
      }
    }
  }

  private int slot(int hash) {
    int h = hash * 0x9E3779B9;
    int i = (h ^ (h >>> 15)) & (slots.length - 1);
    while (slots[i] != FREE && slots[i] != hash) {
      i = (i + 1) & (slots.length - 1);
    }
    return i;
  }

  private void grow() {
    int[] old = slots;
    slots = new int[old.length * 2];
    Arrays.fill(slots, FREE);
    for (int hash : old) {
      if (hash != FREE) {
        slots[slot(hash)] = hash;
      }
    }
  }
}
