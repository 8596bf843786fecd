package dev.gantrywright.patch;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** The lines of one file as a plan leaves it; a large header is walked once, not for each line. */
final class PatchedLines {
  private final byte[] bytes;
  private int[] starts = new int[1024];
  private int count = 1;
  private Boolean utf8;

  PatchedLines(byte[] bytes) {
    this.bytes = bytes;
    for (int i = 0; i < bytes.length; i++) {
      boolean pair = bytes[i] == '\r' && i + 1 < bytes.length && bytes[i + 1] == '\n';
      if (bytes[i] == '\n' || bytes[i] == '\r' && !pair) {
        if (count == starts.length) {
          starts = Arrays.copyOf(starts, count * 2);
        }
        starts[count++] = i + 1;
      }
    }
  }

  /** How many lines there are; what follows the last line end counts as one. */
  int count() {
    return count;
  }

  /**
   * Lines without their ends, joined by {@code \n}.
   *
   * @param first from 1
   */
  String text(int first, int rows) {
    StringBuilder out = new StringBuilder();
    for (int line = first; line < first + rows; line++) {
      int from = starts[line - 1];
      int to = line < count ? starts[line] : bytes.length;
      while (to > from && (bytes[to - 1] == '\n' || bytes[to - 1] == '\r')) {
        to--;
      }
      out.append(line > first ? "\n" : "").append(text(from, to, utf8()));
    }
    return out.toString();
  }

  private String text(int from, int to, boolean asUtf8) {
    return new String(
        bytes, from, to - from, asUtf8 ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1);
  }

  /** UTF-8 where the whole file is, as the header engine reads the line before. */
  private boolean utf8() {
    if (utf8 == null) {
      int i = 0;
      while (i < bytes.length && bytes[i] >= 0) {
        i++;
      }
      utf8 = i == bytes.length || decodes(ByteBuffer.wrap(bytes, i, bytes.length - i));
    }
    return utf8;
  }

  private static boolean decodes(ByteBuffer rest) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(rest);
      return true;
    } catch (CharacterCodingException other) {
      return false;
    }
  }
}
