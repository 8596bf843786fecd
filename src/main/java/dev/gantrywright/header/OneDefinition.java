package dev.gantrywright.header;

import java.util.Arrays;

/**
 * How the bytes of a file differ from those of the file as it was read before, where all that
 * differs is the text of one definition: it has its name still, it ends where its line ends, no
 * line end comes or goes, and no NUL. Then every other directive stands where it stood, moved by
 * the growth.
 *
 * @param row of the definition, in both files
 * @param from the first byte that differs
 * @param end the byte behind the last that differs, in the file before
 * @param growth how many bytes the file is longer now; negative where it is shorter
 * @param definition the definition as it now reads, a file of its own
 */
record OneDefinition(int row, int from, int end, int growth, SourceFile definition) {

  /** The difference; null where the bytes are the same or more than one definition may differ. */
  static OneDefinition between(SourceFile before, byte[] now) {
    byte[] then = before.bytes();
    int from = Arrays.mismatch(then, now);
    DirectiveTable table = before.table();
    int row = from < 0 ? -1 : table.rowBefore(from);
    if (row < 0 || table.kind(row) != DirectiveKind.DEFINE || table.end(row) < from) {
      return null;
    }
    int growth = now.length - then.length;
    int start = table.start(row);
    int end = table.end(row);
    int ended = NearProof.pastLineEnd(then, end);
    if (end + growth < from || !sameBehind(then, end, now, end + growth)) {
      return null;
    }
    SourceFile old = alone(before, then, start, end, ended);
    SourceFile definition = alone(before, now, start, end + growth, ended + growth);
    if (old == null || definition == null || !NearProof.same(old, definition)) {
      return null;
    }
    int tail = sameTail(then, end, now, end + growth, from);
    OneDefinition found = new OneDefinition(row, from, end - tail, growth, definition);
    return found.reachesFurther(then, now) ? null : found;
  }

  private static boolean sameBehind(byte[] then, int end, byte[] now, int nowEnd) {
    return Arrays.equals(then, end, then.length, now, nowEnd, now.length);
  }

  private static SourceFile alone(SourceFile file, byte[] bytes, int start, int end, int ended) {
    return NearProof.alone(file.path(), Arrays.copyOfRange(bytes, start, ended), ended - end);
  }

  private static int sameTail(byte[] then, int end, byte[] now, int nowEnd, int from) {
    int most = Math.min(end, nowEnd) - from;
    int same = 0;
    while (same < most && then[end - 1 - same] == now[nowEnd - 1 - same]) {
      same++;
    }
    return same;
  }

  /**
   * Whether a line end is among what differs, or could be joined or parted by it, or a NUL, which
   * makes a file no text.
   */
  private boolean reachesFurther(byte[] then, byte[] now) {
    return holdsMark(then, from - 1, end) || holdsMark(now, from, end + growth);
  }

  private static boolean holdsMark(byte[] bytes, int from, int to) {
    for (int i = from; i < to; i++) {
      if (bytes[i] == '\n' || bytes[i] == '\r' || bytes[i] == 0) {
        return true;
      }
    }
    return false;
  }

  /** Where an offset of the file before stands now, one outside of what differs. */
  int moved(int offset) {
    return offset > from ? offset + growth : offset;
  }

  /** Ascending offsets of the file before as they stand now. */
  int[] moved(int[] offsets, int count) {
    int[] out = Arrays.copyOf(offsets, count);
    for (int i = count - 1; i >= 0 && out[i] > from; i--) {
      out[i] += growth;
    }
    return out;
  }

  /**
   * Whether all that differs is ASCII, before and now, and what touches it: then every run of other
   * bytes is as it was, and they tell the file's encoding.
   */
  boolean ascii(byte[] then, byte[] now) {
    return ascii(then, from - 1, Math.min(end + 1, then.length)) && ascii(now, from, end + growth);
  }

  private static boolean ascii(byte[] bytes, int from, int to) {
    for (int i = from; i < to; i++) {
      if (bytes[i] < 0) {
        return false;
      }
    }
    return true;
  }
}
