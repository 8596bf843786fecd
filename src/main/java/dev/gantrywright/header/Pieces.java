package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/**
 * A file as pieces of its original bytes and new bytes between them, so that several rounds of
 * edits come out as one list of edits on the original.
 */
final class Pieces {
  /** Original bytes from..to, or new bytes when data is set. */
  private record Piece(int from, int to, byte[] data) {
    int length() {
      return to - from;
    }

    Piece cut(int start, int end) {
      return new Piece(from + start, from + end, data);
    }
  }

  private final int originalLength;
  private List<Piece> pieces;

  Pieces(int originalLength) {
    this.originalLength = originalLength;
    this.pieces = originalLength == 0 ? List.of() : List.of(new Piece(0, originalLength, null));
  }

  /** Applies sorted, disjoint edits of the current text. */
  void apply(List<Edit> edits) {
    List<Piece> out = new ArrayList<>();
    int done = 0;
    for (Edit edit : edits) {
      copy(done, edit.span().start(), out);
      byte[] data = edit.replacement();
      if (data.length > 0) {
        out.add(new Piece(0, data.length, data));
      }
      done = edit.span().end();
    }
    copy(done, Integer.MAX_VALUE, out);
    pieces = out;
  }

  private void copy(int from, int to, List<Piece> out) {
    int at = 0;
    for (Piece piece : pieces) {
      int start = Math.max(from - at, 0);
      int end = Math.min(to - at, piece.length());
      if (start < end) {
        out.add(piece.cut(start, end));
      }
      at += piece.length();
      if (at >= to) {
        return;
      }
    }
  }

  /** The edits on the original bytes that give the current text. */
  List<Edit> edits() {
    List<Edit> out = new ArrayList<>();
    java.io.ByteArrayOutputStream pending = new java.io.ByteArrayOutputStream();
    int done = 0;
    for (Piece piece : pieces) {
      if (piece.data() != null) {
        pending.write(piece.data(), piece.from(), piece.length());
        continue;
      }
      if (pending.size() > 0 || piece.from() > done) {
        out.add(new Edit(new Span(done, piece.from()), pending.toByteArray()));
        pending.reset();
      }
      done = piece.to();
    }
    if (pending.size() > 0 || done < originalLength) {
      out.add(new Edit(new Span(done, originalLength), pending.toByteArray()));
    }
    return out;
  }
}
