package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The proof of {@link EditProof} from the edited line alone. Between two logical lines the scanner
 * remembers only an open comment and the conditionals it stands in: where a definition begins and
 * ends as one definition of the same name before and after, nothing else of the file can differ.
 * Where that does not show, the whole file is read again.
 */
final class NearProof {
  private NearProof() {}

  /**
   * The line as it will read, from {@code offset} to the end of the definition; null where the line
   * alone does not settle it.
   *
   * @param sorted the edits in file order
   */
  static String line(SourceFile file, List<Edit> sorted, int row, int offset) {
    DirectiveTable table = file.table();
    int start = table.start(row);
    int end = table.end(row);
    boolean inside =
        sorted.stream().allMatch(e -> e.span().start() > start && e.span().end() <= end);
    if (table.kind(row) != DirectiveKind.DEFINE || !inside || offset > start) {
      return null;
    }
    byte[] bytes = file.bytes();
    int ended = pastLineEnd(bytes, end);
    byte[] before = Arrays.copyOfRange(bytes, start, ended);
    byte[] after = FileEdits.spliced(before, moved(sorted, start));
    SourceFile one = alone(file.path(), before, ended - end);
    SourceFile other = alone(file.path(), after, ended - end);
    if (one == null || other == null || !same(one, other)) {
      return null;
    }
    byte[] line = new byte[start - offset + after.length - (ended - end)];
    System.arraycopy(bytes, offset, line, 0, start - offset);
    System.arraycopy(after, 0, line, start - offset, line.length - (start - offset));
    for (byte b : line) {
      if (b < 0) {
        // The encoding is told from the whole file.
        return null;
      }
    }
    return new String(line, StandardCharsets.US_ASCII);
  }

  /** Whether two definitions that stand alone are of the same name and form. */
  static boolean same(SourceFile one, SourceFile other) {
    return one.name(0).equals(other.name(0))
        && one.table().nameStart(0) == other.table().nameStart(0)
        && one.table().has(0, DirectiveTable.FUNCTION_LIKE)
            == other.table().has(0, DirectiveTable.FUNCTION_LIKE);
  }

  /** The slice as a file of its own; null unless it is one sound definition up to its line end. */
  static SourceFile alone(String path, byte[] slice, int lineEnd) {
    SourceFile file = SourceFile.of(path, slice);
    boolean whole =
        file.table().size() == 1
            && file.table().kind(0) == DirectiveKind.DEFINE
            && file.table().start(0) == 0
            && file.table().end(0) == slice.length - lineEnd
            && file.problems().isEmpty();
    return whole ? file : null;
  }

  private static List<Edit> moved(List<Edit> edits, int by) {
    List<Edit> out = new ArrayList<>();
    for (Edit edit : edits) {
      Span span = edit.span();
      out.add(new Edit(new Span(span.start() - by, span.end() - by), edit.replacement()));
    }
    return out;
  }

  static int pastLineEnd(byte[] bytes, int at) {
    if (at < bytes.length && bytes[at] == '\r') {
      return at + 1 < bytes.length && bytes[at + 1] == '\n' ? at + 2 : at + 1;
    }
    return at < bytes.length && bytes[at] == '\n' ? at + 1 : at;
  }
}
