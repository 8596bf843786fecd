package dev.gantrywright.header;

import java.util.Arrays;

/**
 * What stands where in one file, whatever its conditions come to: settings, nesting, comments,
 * headings. Each is worked out when first asked; threads may race to do so, the results are equal.
 */
final class Layout {
  private final SourceFile file;
  private volatile int[] settingRows;
  private volatile int[] parents;
  private volatile int[] before;
  private volatile CommentBlocks comments;
  private volatile Sections sections;

  Layout(SourceFile file) {
    this.file = file;
  }

  /** That of a file in which one definition has another text. */
  Layout moved(SourceFile other, OneDefinition difference) {
    Layout out = new Layout(other);
    out.settingRows = settingRows;
    out.parents = parents;
    out.before = before;
    out.comments = comments == null ? null : comments.moved(difference);
    out.sections = sections == null ? null : sections.moved(difference);
    return out;
  }

  /** The rows of the directive table that are settings, the include guard's left out. */
  int[] settingRows() {
    int[] known = settingRows;
    if (known == null) {
      known = file.binary() ? new int[0] : findRows();
      settingRows = known;
    }
    return known;
  }

  private int[] findRows() {
    DirectiveTable table = file.table();
    int guard = IncludeGuard.row(file);
    int[] out = new int[table.size()];
    int count = 0;
    for (int row = 0; row < table.size(); row++) {
      if (NameIndex.isDefinition(table, row) && (guard < 0 || row != guard + 1)) {
        out[count++] = row;
      }
    }
    return Arrays.copyOf(out, count);
  }

  /** For each row the row of the branch that it stands in, or -1. */
  int[] parents() {
    int[] known = parents;
    if (known == null) {
      known = Nesting.parents(file.table());
      parents = known;
    }
    return known;
  }

  /** For each row of a branch the row of the branch before it in its chain, otherwise -1. */
  int[] branchesBefore() {
    int[] known = before;
    if (known == null) {
      known = Nesting.before(file.table());
      before = known;
    }
    return known;
  }

  CommentBlocks comments() {
    CommentBlocks known = comments;
    if (known == null) {
      known = CommentBlocks.of(file);
      comments = known;
    }
    return known;
  }

  Sections sections() {
    Sections known = sections;
    if (known == null) {
      known = Sections.of(file, comments());
      sections = known;
    }
    return known;
  }
}
