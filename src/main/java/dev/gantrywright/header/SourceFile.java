package dev.gantrywright.header;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The bytes of one file with its directives; everything else is worked out when first asked. */
final class SourceFile {
  private final String path;
  private final byte[] bytes;
  private final DirectiveTable table;
  private final List<DirectiveScanner.Fault> faults;
  private volatile LineIndex lines;
  private volatile Charset charset;
  private final boolean binary;
  private volatile NameIndex names;
  private final TokenCache tokens;

  private SourceFile(String path, byte[] bytes, DirectiveScanner.Scan scan) {
    this.path = path;
    this.bytes = bytes;
    this.table = scan.table();
    this.faults = scan.faults();
    this.binary = scan.binary();
    this.tokens = new TokenCache(this);
  }

  /** Reads the bytes, which the caller must not change afterwards. */
  static SourceFile of(String path, byte[] bytes) {
    return new SourceFile(path, bytes, DirectiveScanner.scan(bytes));
  }

  /** A file of another language, in which nothing is a directive. */
  static SourceFile unscanned(String path, byte[] bytes) {
    return new SourceFile(path, bytes, DirectiveScanner.none(bytes));
  }

  /** Whether the file holds a NUL byte. */
  boolean binary() {
    return binary;
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

  LineIndex lines() {
    LineIndex known = lines;
    if (known == null) {
      known = LineIndex.of(bytes);
      lines = known;
    }
    return known;
  }

  int lineOf(int offset) {
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
      known = decide();
      charset = known;
    }
    return known;
  }

  private Charset decide() {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return StandardCharsets.UTF_8;
    } catch (CharacterCodingException e) {
      return StandardCharsets.ISO_8859_1;
    }
  }

  String text(int from, int to) {
    return new String(bytes, from, to - from, charset());
  }

  /** A physical line counted from 1, without its line end. */
  String line(int line) {
    int from = lines().start(line);
    int to = line < lines().count() ? lines().start(line + 1) : bytes.length;
    while (to > from && (bytes[to - 1] == '\n' || bytes[to - 1] == '\r')) {
      to--;
    }
    return text(from, to);
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
