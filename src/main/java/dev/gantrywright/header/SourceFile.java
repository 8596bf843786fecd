package dev.gantrywright.header;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The bytes of one file with its directives; everything else is worked out when first asked. */
final class SourceFile {
  private static final int UNDECIDED = -1;
  private static final Charset ASCII = StandardCharsets.ISO_8859_1;

  /** Up to here a line is counted rather than looked up in an index of all lines. */
  private static final int NEAR = 1 << 14;

  private final String path;
  private final byte[] bytes;
  private final DirectiveTable table;
  private final List<DirectiveScanner.Fault> faults;
  private volatile LineIndex lines;
  private volatile Charset charset;
  private volatile int binary = UNDECIDED;
  private volatile NameIndex names;
  private volatile String sha256;
  private final TokenCache tokens;
  private final Layout layout;

  private SourceFile(String path, byte[] bytes, DirectiveScanner.Scan scan) {
    this.path = path;
    this.bytes = bytes;
    this.table = scan.table();
    this.faults = scan.faults();
    this.tokens = new TokenCache(this);
    this.layout = new Layout(this);
  }

  private SourceFile(SourceFile before, byte[] bytes, OneDefinition difference) {
    this.path = before.path;
    this.bytes = bytes;
    this.table = before.table.moved(difference);
    this.faults = before.faults.stream().map(fault -> fault.moved(difference)).toList();
    this.tokens = new TokenCache(this);
    this.layout = before.layout.moved(this, difference);
    this.lines = before.lines == null ? null : before.lines.moved(difference);
    this.names = before.names == null ? null : before.names.of(this);
    this.binary = before.binary;
    this.charset = difference.ascii(before.bytes, bytes) ? before.charset : null;
  }

  /** Reads the bytes, which the caller must not change afterwards. */
  static SourceFile of(String path, byte[] bytes) {
    return new SourceFile(path, bytes, DirectiveScanner.scan(bytes));
  }

  /**
   * Reads bytes that may be nearly those of this file, which then need not be read all anew. The
   * caller must not change them afterwards.
   */
  SourceFile with(byte[] other) {
    if (Arrays.equals(bytes, other)) {
      return this;
    }
    OneDefinition difference = OneDefinition.between(this, other);
    return difference == null ? of(path, other) : new SourceFile(this, other, difference);
  }

  /** A file of another language, in which nothing is a directive. */
  static SourceFile unscanned(String path, byte[] bytes) {
    return new SourceFile(path, bytes, DirectiveScanner.none());
  }

  /** Whether the file holds a NUL byte. */
  boolean binary() {
    int known = binary;
    if (known == UNDECIDED) {
      known = 0;
      for (byte b : bytes) {
        if (b == 0) {
          known = 1;
          break;
        }
      }
      binary = known;
    }
    return known == 1;
  }

  String path() {
    return path;
  }

  byte[] bytes() {
    return bytes;
  }

  DirectiveTable table() {
    return table;
  }

  TokenCache tokens() {
    return tokens;
  }

  NameIndex names() {
    NameIndex known = names;
    if (known == null) {
      known = new NameIndex(this);
      names = known;
    }
    return known;
  }

  Layout layout() {
    return layout;
  }

  /** The SHA-256 of the bytes, in lower-case hexadecimal. */
  String sha256() {
    String known = sha256;
    if (known == null) {
      known = Digest.sha256(bytes);
      sha256 = known;
    }
    return known;
  }

  LineIndex lines() {
    LineIndex known = lines;
    if (known == null) {
      known = LineIndex.of(bytes);
      lines = known;
    }
    return known;
  }

  int lineOf(int offset) {
    if (lines == null && offset < NEAR) {
      return LineIndex.countedLineOf(bytes, offset);
    }
    return lines().lineOf(offset);
  }

  /** {@code path:line} of a directive. */
  String place(int directive) {
    return path + ":" + lineOf(table.start(directive));
  }

  /** UTF-8 when the whole file is valid UTF-8, otherwise ISO-8859-1. */
  Charset charset() {
    Charset known = charset;
    if (known == null) {
      known = decide(bytes, 0, bytes.length);
      charset = known;
    }
    return known;
  }

  private static Charset decide(byte[] bytes, int from, int to) {
    int i = from;
    while (i < to && bytes[i] >= 0) {
      i++;
    }
    if (i == to) {
      return StandardCharsets.UTF_8;
    }
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, i, to - i));
      return StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      return StandardCharsets.ISO_8859_1;
    }
  }

  /** A short piece of text for a message, its encoding told from itself alone. */
  String excerpt(int from, int to) {
    return new String(bytes, from, to - from, decide(bytes, from, to));
  }

  String text(int from, int to) {
    return new String(bytes, from, to - from, isAscii(from, to) ? ASCII : charset());
  }

  private boolean isAscii(int from, int to) {
    for (int i = from; i < to; i++) {
      if (bytes[i] < 0) {
        return false;
      }
    }
    return true;
  }

  /** A physical line counted from 1, without its line end. */
  String line(int line) {
    return text(lines().start(line), lineEnd(line));
  }

  /** The offset behind the last byte of a line counted from 1, its line end not included. */
  int lineEnd(int line) {
    int from = lines().start(line);
    int to = line < lines().count() ? lines().start(line + 1) : bytes.length;
    while (to > from && (bytes[to - 1] == '\n' || bytes[to - 1] == '\r')) {
      to--;
    }
    return to;
  }

  /** The macro name of a directive, splices taken out. */
  String name(int directive) {
    int from = table.nameStart(directive);
    int to = table.nameEnd(directive);
    if (table.has(directive, DirectiveTable.UNUSUAL_NAME)) {
      return MacroName.clean(bytes, from, to);
    }
    return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
  }

  List<Problem> problems() {
    List<Problem> out = new ArrayList<>();
    for (DirectiveScanner.Fault fault : faults) {
      int line = lineOf(fault.offset());
      int column = fault.offset() - lines().start(line) + 1;
      out.add(new Problem(path, line, column, fault.text()));
    }
    return out;
  }
}
