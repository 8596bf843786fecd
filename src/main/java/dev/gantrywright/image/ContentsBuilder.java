package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers pieces in any order and joins those that touch. */
final class ContentsBuilder {
  private record Piece(long address, byte[] bytes, int order, String where) {
    long end() {
      return address + bytes.length;
    }
  }

  /** A record costs memory beyond its bytes; 2 MiB in records of 16 bytes are 131,072. */
  private static final int MOST_PIECES = 1_000_000;

  private final List<Piece> pieces = new ArrayList<>();
  private long total;

  /** Adds bytes at an address; {@code where} names the record for a message. */
  void put(long address, byte[] bytes, String where) throws BrokenImage {
    total += bytes.length;
    if (total > ImageReader.LARGEST_FILE) {
      throw new BrokenImage(
          BrokenImage.Reason.TOO_LARGE, where, "takes the image past 64 MiB", "Build again.");
    }
    if (pieces.size() >= MOST_PIECES) {
      throw new BrokenImage(
          BrokenImage.Reason.TOO_LARGE,
          where,
          String.format(java.util.Locale.ROOT, "comes after %,d others with data", MOST_PIECES),
          "Build again with longer records.");
    }
    if (bytes.length > 0) {
      pieces.add(new Piece(address, bytes, pieces.size(), where));
    }
  }

  /**
   * Joins everything.
   *
   * @throws BrokenImage where two records give one address different bytes
   */
  Contents build() throws BrokenImage {
    List<Piece> sorted = new ArrayList<>(pieces);
    sorted.sort(Comparator.comparingLong(Piece::address).thenComparingInt(Piece::order));
    List<Segment> out = new ArrayList<>();
    int i = 0;
    while (i < sorted.size()) {
      int next = i + 1;
      long end = sorted.get(i).end();
      while (next < sorted.size() && sorted.get(next).address() <= end) {
        end = Math.max(end, sorted.get(next).end());
        next++;
      }
      out.add(joined(sorted.subList(i, next), end));
      i = next;
    }
    return new Contents(out);
  }

  private static Segment joined(List<Piece> run, long end) throws BrokenImage {
    long start = run.get(0).address();
    byte[] bytes = new byte[(int) (end - start)];
    long filled = start;
    for (Piece p : run) {
      int at = (int) (p.address() - start);
      int known = (int) Math.max(0, Math.min(filled - p.address(), p.bytes().length));
      for (int k = 0; k < known; k++) {
        if (bytes[at + k] != p.bytes()[k]) {
          throw new BrokenImage(
              BrokenImage.Reason.OVERLAP,
              p.where(),
              "gives " + Hex.word(p.address() + k) + " a second time with another value",
              "Build again; two parts of the program are linked to one place.");
        }
      }
      System.arraycopy(p.bytes(), known, bytes, at + known, p.bytes().length - known);
      filled = Math.max(filled, p.end());
    }
    return new Segment(start, bytes);
  }
}
