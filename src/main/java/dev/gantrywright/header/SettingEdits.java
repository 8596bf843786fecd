package dev.gantrywright.header;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Makes the byte edits of one definition; what stands beside it keeps its column where it fits. */
final class SettingEdits {
  private final HeaderDocument document;
  private final byte[] bytes;
  private final Charset charset;

  SettingEdits(HeaderDocument document) {
    this.document = document;
    this.bytes = document.source().bytes();
    this.charset = document.source().charset();
  }

  /** Replaces the value; an empty one makes a flag of it. */
  List<Edit> value(Setting setting, String value) {
    Span span = setting.valueSpan();
    String text = value;
    if (setting.kind() == Setting.Kind.FLAG) {
      text = value.isEmpty() ? "" : " " + value;
    } else if (value.isEmpty()) {
      span = new Span(setting.nameSpan().end(), span.end());
    } else if (span.start() == setting.nameSpan().end()) {
      text = " " + value; // the old value, such as a literal, may touch the name; a new one may not
    }
    return replaced(span, text, span.end());
  }

  /** Replaces part of a value. */
  List<Edit> part(Setting setting, Span element, String value) {
    return replaced(element, value, setting.valueSpan().end());
  }

  /** The replacement, and a change of the gap before a trailing comment that evens it out. */
  private List<Edit> replaced(Span span, String text, int valueEnd) {
    byte[] now = text.getBytes(charset);
    List<Edit> out = new ArrayList<>();
    int gap = 0;
    while (valueEnd + gap < bytes.length && bytes[valueEnd + gap] == ' ') {
      gap++;
    }
    boolean comment = valueEnd + gap + 1 < bytes.length && bytes[valueEnd + gap] == '/';
    int wider = width(text) - width(new String(bytes, span.start(), span.length(), charset));
    int newGap = Math.max(1, gap - wider);
    if (!comment || gap == 0 || newGap == gap || spansLines(span)) {
      out.add(new Edit(span, now));
    } else if (span.end() == valueEnd) {
      byte[] padded = (text + " ".repeat(newGap)).getBytes(charset);
      out.add(new Edit(new Span(span.start(), valueEnd + gap), padded));
    } else {
      out.add(new Edit(span, now));
      byte[] blanks = " ".repeat(newGap).getBytes(StandardCharsets.ISO_8859_1);
      out.add(new Edit(new Span(valueEnd, valueEnd + gap), blanks));
    }
    return out;
  }

  private static int width(String text) {
    return text.codePointCount(0, text.length());
  }

  private boolean spansLines(Span span) {
    for (int i = span.start(); i < span.end(); i++) {
      if (bytes[i] == '\n' || bytes[i] == '\r') {
        return true;
      }
    }
    return false;
  }

  /** Takes the comment marks off. */
  List<Edit> switchedOn(int row) {
    DirectiveTable table = document.source().table();
    int start = table.start(row);
    int hash = start + 2;
    while (bytes[hash] != '#') {
      hash++;
    }
    List<Edit> out = new ArrayList<>();
    out.add(new Edit(new Span(start, hash), new byte[0]));
    if (table.has(row, DirectiveTable.IN_BLOCK_COMMENT)) {
      ValueText value = ValueText.of(document.source(), row);
      int close = value.limit();
      int from = close;
      while (from > value.end() && bytes[from - 1] == ' ') {
        from--;
      }
      boolean more = close + 2 < table.end(row);
      out.add(new Edit(new Span(more ? close : from, close + 2), new byte[0]));
    }
    return out;
  }

  /** Puts a definition behind comment marks. */
  List<Edit> switchedOff(int row) {
    int start = document.source().table().start(row);
    byte[] marks = {'/', '/'};
    return List.of(new Edit(new Span(start, start), marks));
  }

  /** Whether a line end inside the directive is not a splice, so that one mark cannot cover it. */
  boolean runsOverLines(int row) {
    DirectiveTable table = document.source().table();
    SourceCursor cursor = new SourceCursor(bytes, 0, table.end(row));
    int i = table.start(row);
    while (i < table.end(row)) {
      int splice = cursor.splice(i);
      if (splice == 0 && cursor.lineEnd(i) > 0) {
        return true;
      }
      i += Math.max(1, splice);
    }
    return false;
  }

  /** Adds a line behind the definition, with the line end that the file uses there. */
  List<Edit> inserted(int row, String line) {
    int end = document.source().table().end(row);
    String eol = lineEndAt(end);
    return List.of(new Edit(new Span(end, end), (eol + line).getBytes(charset)));
  }

  private String lineEndAt(int offset) {
    SourceCursor cursor = new SourceCursor(bytes, 0, bytes.length);
    for (int i = offset; i >= 0; i--) {
      int length = cursor.lineEnd(i);
      if (length > 0) {
        boolean tail = length == 1 && bytes[i] == '\n' && i > 0 && bytes[i - 1] == '\r';
        return tail ? "\r\n" : new String(bytes, i, length, StandardCharsets.ISO_8859_1);
      }
    }
    return "\n";
  }
}
