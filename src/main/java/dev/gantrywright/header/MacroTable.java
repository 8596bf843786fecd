package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.Predicate;

/**
 * The macros in force, by name. Names are compared as bytes of the files that they stand in, so
 * that hundreds of thousands of definitions cost no strings.
 */
final class MacroTable {
  /** A name that has been defined or undefined at least once. */
  static final class Symbol {
    final int hash;
    final byte[] text;
    final int from;
    final int length;
    private SourceFile file;
    private int directive = -1;
    private Meaning unusual;

    private Symbol(int hash, byte[] text, int from, int length) {
      this.hash = hash;
      this.text = text;
      this.from = from;
      this.length = length;
    }

    String name() {
      return new String(text, from, length, StandardCharsets.ISO_8859_1);
    }

    boolean defined() {
      return directive >= 0 && unusual == null;
    }

    SourceFile file() {
      return file;
    }

    int directive() {
      return directive;
    }

    Meaning meaning() {
      if (unusual != null) {
        return unusual;
      }
      return directive < 0 ? Meaning.UNDEFINED : new Meaning.Defined(file, directive);
    }

    void set(Meaning meaning) {
      unusual = null;
      file = null;
      directive = -1;
      if (meaning instanceof Meaning.Defined d) {
        file = d.file();
        directive = d.directive();
      } else if (!(meaning instanceof Meaning.Undefined)) {
        unusual = meaning;
      }
    }
  }

  private static final int LEAST = 1024;

  /** So many names one behind the other have hashes that someone made alike. */
  private static final int LONGEST_RUN = 64;

  private Symbol[] slots;
  private int used;

  /** Whether names are placed by all their bytes rather than by the hash of the files' tables. */
  private boolean careful;

  MacroTable() {
    this(0);
  }

  /**
   * @param expected how many names are to be expected; more make it grow
   */
  MacroTable(int expected) {
    slots = new Symbol[Math.max(LEAST, Integer.highestOneBit(Math.max(1, expected)) * 4)];
  }

  void define(SourceFile source, int row) {
    Symbol s = symbol(source, row);
    s.file = source;
    s.directive = row;
    s.unusual = null;
  }

  /** The symbol that a directive names, made if it is new. */
  Symbol symbol(SourceFile source, int row) {
    DirectiveTable table = source.table();
    if (table.has(row, DirectiveTable.UNUSUAL_NAME)) {
      return symbol(source.name(row));
    }
    int from = table.nameStart(row);
    return symbol(source.bytes(), from, table.nameEnd(row) - from, table.hash(row));
  }

  Symbol symbol(String name) {
    byte[] text = name.getBytes(StandardCharsets.ISO_8859_1);
    return symbol(text, 0, text.length, name.hashCode());
  }

  private Symbol symbol(byte[] text, int from, int length, int hash) {
    int mask = slots.length - 1;
    int first = place(hash, text, from, length);
    int i = first & mask;
    Symbol s;
    while ((s = slots[i]) != null) {
      if (s.hash == hash && s.length == length && same(s, text, from)) {
        return s;
      }
      i = (i + 1) & mask;
    }
    s = new Symbol(hash, text, from, length);
    slots[i] = s;
    boolean crowded = !careful && ((i - first) & mask) > LONGEST_RUN;
    careful |= crowded;
    if (++used * 2 > slots.length || crowded) {
      grow();
    }
    return s;
  }

  private int place(int hash, byte[] text, int from, int length) {
    if (!careful) {
      return spread(hash);
    }
    long all = length;
    for (int i = from; i < from + length; i++) {
      all = (all ^ text[i]) * 0x9E3779B97F4A7C15L;
      all ^= all >>> 29;
    }
    return (int) (all ^ all >>> 32);
  }

  private static boolean same(Symbol s, byte[] text, int from) {
    for (int i = 0; i < s.length; i++) {
      if (s.text[s.from + i] != text[from + i]) {
        return false;
      }
    }
    return true;
  }

  private static int spread(int hash) {
    int h = hash * 0x9E3779B9;
    return h ^ (h >>> 15);
  }

  /** The symbol of a name, or null if it was never defined or undefined. */
  Symbol find(String name) {
    int hash = name.hashCode();
    int mask = slots.length - 1;
    int i;
    if (careful) {
      byte[] text = name.getBytes(StandardCharsets.ISO_8859_1);
      i = place(hash, text, 0, text.length) & mask;
    } else {
      i = spread(hash) & mask;
    }
    Symbol s;
    while ((s = slots[i]) != null) {
      if (s.hash == hash && s.length == name.length() && same(s, name)) {
        return s;
      }
      i = (i + 1) & mask;
    }
    return null;
  }

  private static boolean same(Symbol s, String name) {
    for (int i = 0; i < s.length; i++) {
      if ((s.text[s.from + i] & 0xff) != name.charAt(i)) {
        return false;
      }
    }
    return true;
  }

  private void grow() {
    Symbol[] old = slots;
    slots = new Symbol[old.length * 2];
    int mask = slots.length - 1;
    for (Symbol s : old) {
      if (s != null) {
        int i = place(s.hash, s.text, s.from, s.length) & mask;
        while (slots[i] != null) {
          i = (i + 1) & mask;
        }
        slots[i] = s;
      }
    }
  }

  /** The symbols that have one definition in force, some files left out, in no order. */
  Symbol[] defined(Predicate<SourceFile> left) {
    Symbol[] out = new Symbol[used];
    int count = 0;
    SourceFile kept = null;
    for (Symbol s : slots) {
      if (s != null && s.defined() && (s.file == kept || !left.test(s.file))) {
        kept = s.file;
        out[count++] = s;
      }
    }
    return Arrays.copyOf(out, count);
  }
}
