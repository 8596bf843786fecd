package dev.gantrywright.header;

import java.util.List;

/**
 * Proves after an edit that only the intended directive changed: every other directive of the file
 * is found again at its place.
 */
final class EditProof {
  private EditProof() {}

  /** Whether all rows but {@code row} are the same, moved by what the edits add before them. */
  static boolean holds(
      SourceFile before, SourceFile after, List<Edit> edits, int row, boolean inserts) {
    DirectiveTable a = before.table();
    DirectiveTable b = after.table();
    int added = b.size() - a.size();
    if (added < 0 || added > (inserts ? 1 : 0)) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      int j = i > row ? i + added : i;
      if (i == row && !inserts) {
        boolean alike =
            a.has(i, DirectiveTable.FUNCTION_LIKE) == b.has(j, DirectiveTable.FUNCTION_LIKE);
        if (!alike || !before.name(i).equals(after.name(j))) {
          return false;
        }
        continue;
      }
      int shift = shift(edits, a.start(i));
      boolean same =
          a.kind(i) == b.kind(j)
              && a.start(i) + shift == b.start(j)
              && a.nameStart(i) + shift == b.nameStart(j)
              && a.nameEnd(i) + shift == b.nameEnd(j)
              && a.end(i) + shift == b.end(j);
      if (!same) {
        return false;
      }
    }
    return before.problems().size() == after.problems().size();
  }

  private static int shift(List<Edit> edits, int offset) {
    int shift = 0;
    for (Edit edit : edits) {
      if (edit.span().end() <= offset) {
        shift += edit.growth();
      }
    }
    return shift;
  }
}
