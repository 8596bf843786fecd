package dev.gantrywright.patch;

import dev.gantrywright.header.Edit;
import dev.gantrywright.header.FileEdits;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a diff changes, one entry a run of lines; it names no macro. */
final class DiffLines {
  private DiffLines() {}

  static List<PlannedLine> of(byte[] bytes, String path, FileEdits edits, String cause) {
    List<PlannedLine> lines = new ArrayList<>();
    int line = 1;
    int at = 0;
    for (Edit edit : edits.edits()) {
      for (; at < edit.span().start(); at++) {
        line += bytes[at] == '\n' ? 1 : 0;
      }
      byte[] old = Arrays.copyOfRange(bytes, edit.span().start(), edit.span().end());
      lines.add(
          new PlannedLine(path, line, text(old), text(edit.replacement()), "", "", cause, ""));
    }
    return lines;
  }

  private static String text(byte[] bytes) {
    return String.join("\n", new String(bytes, StandardCharsets.UTF_8).lines().toList());
  }
}
