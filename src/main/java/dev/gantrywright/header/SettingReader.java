package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/** Makes the setting of one row: value, comments, hints, state. */
final class SettingReader {
  private final HeaderDocument document;
  private final SourceFile file;

  SettingReader(HeaderDocument document) {
    this.document = document;
    this.file = document.source();
  }

  Setting read(int row) {
    DirectiveTable table = file.table();
    ValueText value = ValueText.of(file, row);
    Setting.Kind kind =
        table.has(row, DirectiveTable.FUNCTION_LIKE)
            ? Setting.Kind.FUNCTION
            : value.text().isEmpty() ? Setting.Kind.FLAG : Setting.Kind.VALUE;
    String behind = behind(row, value);
    String comment = comment(row, behind);
    CommentHints near = CommentHints.of(behind);
    CommentHints hints = comment.equals(behind) ? near : CommentHints.of(comment);
    return new Setting(
        file.path(),
        file.lines().lineOf(table.start(row)),
        file.name(row),
        kind,
        table.kind(row) == DirectiveKind.DEFINE,
        value.text(),
        comment,
        file.layout().sections().at(table.start(row)),
        near.choices().isEmpty() ? hints.choices() : near.choices(),
        near.unit().isEmpty() ? hints.unit() : near.unit(),
        near.range() == null ? hints.range() : near.range(),
        document.state(row),
        document.reason(row),
        new Span(lineStart(table.start(row)), table.end(row)),
        new Span(table.nameStart(row), table.nameEnd(row)),
        new Span(value.start(), value.end()),
        BraceList.elements(file.bytes(), value.start(), value.end()));
  }

  private int lineStart(int offset) {
    byte[] b = file.bytes();
    int at = offset;
    while (at > 0 && b[at - 1] != '\n' && b[at - 1] != '\r') {
      at--;
    }
    return at;
  }

  /** The comment behind the value, without marks. */
  private String behind(int row, ValueText value) {
    int to = file.table().end(row);
    boolean inComment = file.table().has(row, DirectiveTable.IN_BLOCK_COMMENT);
    int from = Math.min(inComment ? value.limit() + 2 : value.end(), to);
    return String.join("\n", CommentText.lines(file.text(from, to)));
  }

  private String comment(int row, String behind) {
    List<String> lines = new ArrayList<>();
    Span above = file.layout().comments().above(file.bytes(), lineStart(file.table().start(row)));
    if (above != null) {
      lines.addAll(CommentText.lines(file.text(above.start(), above.end())));
    }
    if (!behind.isEmpty()) {
      lines.add(behind);
    }
    return String.join("\n", lines);
  }
}
