package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/**
 * One header, read without loss: its bytes, its settings, and what is wrong with it. Immutable;
 * settings are made when they are asked for, so that a large header stays small.
 */
public final class HeaderDocument {
  private final SourceFile source;
  private final boolean binary;
  private final Visits visits;

  private HeaderDocument(SourceFile source, Visits visits) {
    this.source = source;
    this.visits = visits;
    this.binary = source.binary();
  }

  /**
   * Reads a header that stands alone: names that it does not define are unknown.
   *
   * @param path how the header is called in settings and problems, with {@code /}
   * @param bytes its bytes; they are copied
   */
  public static HeaderDocument of(String path, byte[] bytes) {
    SourceFile source = SourceFile.of(path, bytes.clone());
    Visits visits = new Visits();
    NameIndex names = source.names();
    Evaluation evaluation =
        new Evaluation(
            Language.of(path),
            IncludeResolver.none(),
            Unknowns.open(names::contains),
            visits,
            false);
    evaluation.include(source, null, -1);
    return new HeaderDocument(source, visits);
  }

  /** A header as an evaluation of its folder saw it. */
  static HeaderDocument within(SourceFile source, Visits visits) {
    return new HeaderDocument(source, visits);
  }

  SourceFile source() {
    return source;
  }

  /** The path that the document was read under. */
  public String path() {
    return source.path();
  }

  /** A copy of the bytes as they were read. */
  public byte[] bytes() {
    return source.bytes().clone();
  }

  /** The bytes of a span as ISO-8859-1 text, so that an offset in it is a byte's. */
  public String raw(Span span) {
    return new String(source.bytes(), span.start(), span.length(), StandardCharsets.ISO_8859_1);
  }

  /** The SHA-256 of the bytes, in lower-case hexadecimal. */
  public String sha256() {
    return source.sha256();
  }

  /** The line, counted from 1, on which a byte stands. */
  public int lineOf(int offset) {
    return source.lineOf(offset);
  }

  /** Whether the file holds NUL bytes; then it has no settings and takes no edits. */
  public boolean binary() {
    return binary;
  }

  /** What is wrong with the file as it stands. */
  public List<Problem> problems() {
    if (binary) {
      return List.of(
          new Problem(path(), 0, 0, "this is not a text file (it holds NUL bytes); left alone"));
    }
    return List.copyOf(source.problems());
  }

  /** All settings in file order, made anew at each access. */
  public List<Setting> settings() {
    return new SettingList(source.layout().settingRows());
  }

  private final class SettingList extends AbstractList<Setting> implements RandomAccess {
    private final int[] rows;

    SettingList(int[] rows) {
      this.rows = rows;
    }

    @Override
    public Setting get(int index) {
      return setting(rows[index]);
    }

    @Override
    public int size() {
      return rows.length;
    }
  }

  Setting setting(int row) {
    return new SettingReader(this).read(row);
  }

  /** The row whose name starts at the offset. */
  int rowAt(int nameStart) {
    DirectiveTable table = source.table();
    int low = 0;
    int high = table.size() - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (table.nameStart(middle) < nameStart) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  State state(int row) {
    return visits.of(source).state(row);
  }

  String reason(int row) {
    return Reasons.words(chain(row, Reasons.MOST_IN_LINE));
  }

  /** The conditions above a row, outermost first, the nearest of each file. */
  List<Reasons.Told> chain(int row, int most) {
    return Reasons.chain(source, row, visits, most);
  }
}
