package dev.gantrywright.header;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Works out what a change to a build setting would do to a folder as it stands. */
final class IniChanges {
  private final FirmwareFolder folder;

  IniChanges(FirmwareFolder folder) {
    this.folder = folder;
  }

  Proposal setKey(Change.SetKey change) {
    String shown = "[" + change.section() + "] " + change.key();
    List<IniDocument> holding = new ArrayList<>();
    List<IniDocument> withSection = new ArrayList<>();
    for (IniDocument document : folder.buildSettings()) {
      if (document.entry(change.section(), change.key()).isPresent()) {
        holding.add(document);
      } else if (document.sections().contains(change.section())) {
        withSection.add(document);
      }
    }
    if (holding.size() > 1 || holding.isEmpty() && withSection.size() != 1) {
      return new Proposal.No(nowhere(shown, change.section(), holding, withSection), false);
    }
    IniDocument document = holding.isEmpty() ? withSection.get(0) : holding.get(0);
    if (!document.source().charset().newEncoder().canEncode(change.value())
        || change.value().indexOf('\0') >= 0
        || change.value().indexOf('\r') >= 0) {
      return new Proposal.No(
          shown + ": the value holds a character that cannot stand there", false);
    }
    return holding.isEmpty() ? add(document, change) : replace(document, change);
  }

  private static String nowhere(
      String shown, String section, List<IniDocument> holding, List<IniDocument> withSection) {
    if (holding.isEmpty() && withSection.isEmpty()) {
      return shown + ": no build-settings file of the folder has a section [" + section + "]";
    }
    List<String> paths = new ArrayList<>();
    (holding.isEmpty() ? withSection : holding).forEach(document -> paths.add(document.path()));
    String stands = holding.isEmpty() ? ": its section stands" : " stands";
    return shown
        + stands
        + " in several build-settings files; edit one by hand: "
        + String.join(", ", paths);
  }

  private Proposal replace(IniDocument document, Change.SetKey change) {
    Optional<IniDocument.Entry> found = document.entry(change.section(), change.key());
    IniDocument.Entry entry = found.orElseThrow();
    if (entry.value().equals(change.value())) {
      return new Proposal.Already(document.path(), entry.line());
    }
    String[] lines = change.value().split("\n", -1);
    if (lines.length > 1 && lines.length == entry.lineSpans().size()) {
      return checked(document, change, lineByLine(document, entry, lines), entry);
    }
    Span span = entry.valueSpan();
    String text = change.value().replace("\n", eol(document) + indent(document, entry));
    boolean bare = span.length() == 0 && !blankBefore(document, span.start());
    String spaced = bare && !text.isEmpty() ? " " + text : text;
    return checked(document, change, List.of(beside(document, span, spaced)), entry);
  }

  /** Only the lines that differ, so that comments between them stay. */
  private static List<Edit> lineByLine(
      IniDocument document, IniDocument.Entry entry, String[] lines) {
    List<Edit> out = new ArrayList<>();
    for (int i = 0; i < lines.length; i++) {
      Span span = entry.lineSpans().get(i);
      if (!document.source().text(span.start(), span.end()).equals(lines[i])) {
        out.add(beside(document, span, lines[i]));
      }
    }
    return out;
  }

  /** The edit that keeps a comment behind the value at its column where the new text fits. */
  private static Edit beside(IniDocument document, Span span, String text) {
    byte[] b = document.source().bytes();
    Charset charset = document.source().charset();
    int comment = span.end();
    while (comment < b.length && b[comment] == ' ') {
      comment++;
    }
    boolean none = comment == b.length || b[comment] != ';' && b[comment] != '#';
    String old = document.source().text(span.start(), span.end());
    if (none || comment == span.end() || text.indexOf('\n') >= 0 || old.indexOf('\n') >= 0) {
      return new Edit(span, text.getBytes(charset));
    }
    int wider = text.codePointCount(0, text.length()) - old.codePointCount(0, old.length());
    int gap = Math.max(1, comment - span.end() - wider);
    return new Edit(new Span(span.start(), comment), (text + " ".repeat(gap)).getBytes(charset));
  }

  private Proposal add(IniDocument document, Change.SetKey change) {
    int end = document.endOf(change.section());
    String value = change.value().replace("\n", eol(document) + "  ");
    String line = eol(document) + change.key() + " = " + value;
    Edit edit = new Edit(new Span(end, end), line.getBytes(document.source().charset()));
    return checked(document, change, List.of(edit), null);
  }

  /** The edit if the file, read again, then has the value and otherwise what it had. */
  private Proposal checked(
      IniDocument document, Change.SetKey change, List<Edit> edits, IniDocument.Entry before) {
    byte[] input = document.source().bytes();
    byte[] output = FileEdits.of(document.path(), input, edits).apply(input);
    IniDocument after = IniDocument.of(document.path(), output);
    boolean set =
        after
            .entry(change.section(), change.key())
            .map(e -> e.value().equals(change.value()))
            .orElse(false);
    int more = before == null ? 1 : 0;
    boolean others = after.entries().size() == document.entries().size() + more;
    if (!set || !others) {
      return new Proposal.No(
          "["
              + change.section()
              + "] "
              + change.key()
              + ": the value cannot be written so that it is read back the same",
          false);
    }
    int offset = before == null ? edits.get(0).span().start() : before.keySpan().start();
    int line = document.source().lineOf(offset);
    return new Proposal.Edits(
        document.path(), edits, offset, document.source().line(line), -1, false, "");
  }

  private static boolean blankBefore(IniDocument document, int offset) {
    byte[] b = document.source().bytes();
    return offset > 0 && (b[offset - 1] == ' ' || b[offset - 1] == '\t');
  }

  private static String indent(IniDocument document, IniDocument.Entry entry) {
    byte[] b = document.source().bytes();
    int line = document.source().lineOf(entry.valueSpan().end());
    if (line > entry.line()) {
      int from = document.source().lines().start(line);
      int to = from;
      while (b[to] == ' ' || b[to] == '\t') {
        to++;
      }
      return new String(b, from, to - from, StandardCharsets.ISO_8859_1);
    }
    return "  ";
  }

  private static String eol(IniDocument document) {
    byte[] b = document.source().bytes();
    for (int i = 0; i < b.length; i++) {
      if (b[i] == '\n') {
        return i > 0 && b[i - 1] == '\r' ? "\r\n" : "\n";
      }
    }
    return "\n";
  }

  /** The line that holds the offset, for an account of what changed. */
  static String lineAt(String path, byte[] bytes, int offset) {
    SourceFile file = SourceFile.unscanned(path, bytes);
    return file.line(file.lineOf(Math.min(offset, bytes.length)));
  }
}
