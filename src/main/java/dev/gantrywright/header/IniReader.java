package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads a build-settings file line by line. */
final class IniReader {
  /** What was found; {@code ends} gives for each section the end of its last filled line. */
  record Reading(
      List<String> sections,
      List<IniDocument.Entry> entries,
      Map<String, Integer> ends,
      List<Problem> problems) {}

  private final SourceFile file;
  private final byte[] b;
  private final List<String> sections = new ArrayList<>();
  private final List<IniDocument.Entry> entries = new ArrayList<>();
  private final Map<String, Integer> ends = new HashMap<>();
  private final List<Problem> problems = new ArrayList<>();
  private String section = "";
  private final List<String> comment = new ArrayList<>();
  private Key open;

  /** A key whose value may go on. */
  private static final class Key {
    private String name;
    private int line;
    private int indent;
    private Span span;
    private int valueStart;
    private int valueEnd;
    private String above = "";
    private String behind = "";
    private final List<String> lines = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();
  }

  private IniReader(SourceFile file) {
    this.file = file;
    this.b = file.bytes();
  }

  static Reading read(SourceFile file) {
    IniReader reader = new IniReader(file);
    if (file.binary()) {
      reader.problems.add(
          new Problem(file.path(), 0, 0, "this is not a text file (it holds NUL bytes)"));
    } else {
      reader.lines();
    }
    return new Reading(
        List.copyOf(reader.sections),
        List.copyOf(reader.entries),
        Map.copyOf(reader.ends),
        List.copyOf(reader.problems));
  }

  private void lines() {
    LineIndex index = file.lines();
    for (int line = 1; line <= index.count(); line++) {
      int from = index.start(line);
      if (line == 1 && b.length >= 3 && b[0] == (byte) 0xEF && b[1] == (byte) 0xBB) {
        from = 3; // byte order mark
      }
      int to = line < index.count() ? index.start(line + 1) : b.length;
      while (to > from && (b[to - 1] == '\n' || b[to - 1] == '\r')) {
        to--;
      }
      int first = from;
      while (first < to && (b[first] == ' ' || b[first] == '\t')) {
        first++;
      }
      if (first < to) {
        filled(line, from, first, to);
        ends.put(section, to);
      } else {
        comment.clear();
      }
    }
    close();
  }

  private void filled(int line, int from, int first, int to) {
    if (b[first] == ';' || b[first] == '#') {
      comment.add(comment(first, to));
      return;
    }
    String above = String.join("\n", comment);
    comment.clear();
    if (open != null && first - from > open.indent) {
      int end = valueEnd(first, to);
      open.lines.add(file.text(first, end));
      open.spans.add(new Span(first, end));
      open.valueStart = open.valueStart < 0 ? first : open.valueStart;
      open.valueEnd = end;
      return;
    }
    close();
    if (b[first] == '[') {
      heading(line, first, to);
    } else {
      key(line, from, first, to, above);
    }
  }

  private void heading(int line, int first, int to) {
    int end = first + 1;
    while (end < to && b[end] != ']') {
      end++;
    }
    if (end == to) {
      problems.add(new Problem(file.path(), line, 0, "this section heading lacks its ]; close it"));
    }
    section = file.text(first + 1, end).strip();
    sections.add(section);
  }

  private void key(int line, int from, int first, int to, String above) {
    int equals = first;
    while (equals < to && b[equals] != '=' && b[equals] != ':') {
      equals++;
    }
    if (equals == to || equals == first) {
      problems.add(
          new Problem(file.path(), line, 0, "this is neither a section, a key nor a comment"));
      return;
    }
    int keyEnd = equals;
    while (b[keyEnd - 1] == ' ' || b[keyEnd - 1] == '\t') {
      keyEnd--;
    }
    int value = equals + 1;
    while (value < to && (b[value] == ' ' || b[value] == '\t')) {
      value++;
    }
    int end = valueEnd(value, to);
    open = new Key();
    open.name = file.text(first, keyEnd);
    open.line = line;
    open.indent = first - from;
    open.span = new Span(first, keyEnd);
    open.valueStart = end > value ? value : -1;
    open.valueEnd = end > value ? end : equals + 1;
    open.lines.add(file.text(value, end));
    open.spans.add(new Span(value, end));
    open.above = above;
    open.behind = comment(end, to);
    if (sections.isEmpty()) {
      sections.add(section);
    }
  }

  /** The words of a comment, without its marks. */
  private String comment(int from, int to) {
    int first = from;
    while (first < to && " \t;#".indexOf(b[first]) >= 0) {
      first++;
    }
    return file.text(first, to).strip();
  }

  /** The end of a value on its line: before a comment that follows a blank, and before blanks. */
  private int valueEnd(int from, int to) {
    int end = from;
    for (int i = from; i < to; i++) {
      boolean blank = b[i] == ' ' || b[i] == '\t';
      boolean mark = b[i] == ';' || b[i] == '#';
      if (mark && (i == from || b[i - 1] == ' ' || b[i - 1] == '\t')) {
        return end;
      }
      end = blank ? end : i + 1;
    }
    return end;
  }

  private void close() {
    if (open == null) {
      return;
    }
    List<String> lines = open.lines;
    List<Span> spans = open.spans;
    if (lines.size() > 1 && lines.get(0).isEmpty()) {
      lines = lines.subList(1, lines.size());
      spans = spans.subList(1, spans.size());
    }
    CommentHints near = CommentHints.of(open.behind);
    CommentHints all = CommentHints.of((open.above + "\n" + open.behind).strip());
    int start = open.valueStart < 0 ? open.valueEnd : open.valueStart;
    entries.add(
        new IniDocument.Entry(
            section,
            open.name,
            String.join("\n", lines),
            open.line,
            open.span,
            new Span(start, open.valueEnd),
            spans,
            near.choices().isEmpty() ? all.choices() : near.choices(),
            near.unit().isEmpty() ? all.unit() : near.unit(),
            near.range() == null ? all.range() : near.range()));
    open = null;
  }
}
