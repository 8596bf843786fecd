package dev.gantrywright.patch;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import com.github.difflib.patch.Chunk;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The unified diff of files as {@code git apply} and {@code patch -p1} take it, byte for byte.
 *
 * <p>A line ends at its line feed, as those two programs see it; a carriage return before it and a
 * byte order mark are part of the line and stay. Three lines of context. The line {@code diff -u}
 * before each file ends the hunk before it for a reader that counts lines anew, such as {@code git
 * apply --recount} on a diff edited by hand.
 */
public final class UnifiedDiff {
  private static final int CONTEXT = 3;
  private static final byte[] NO_NEWLINE =
      "\\ No newline at end of file\n".getBytes(StandardCharsets.US_ASCII);

  private UnifiedDiff() {}

  /** The diff of several files, in the order of their paths; files that are equal add nothing. */
  public static byte[] of(Map<String, byte[]> before, Map<String, byte[]> after) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new TreeMap<>(after)
        .forEach((path, bytes) -> out.writeBytes(of(path, before.get(path), bytes)));
    return out.toByteArray();
  }

  /**
   * The diff of one file.
   *
   * @param path relative to the folder, with {@code /}
   * @return empty where both are equal
   */
  public static byte[] of(String path, byte[] before, byte[] after) {
    List<String> old = lines(before);
    List<String> now = lines(after);
    List<AbstractDelta<String>> deltas = DiffUtils.diff(old, now).getDeltas();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    if (deltas.isEmpty()) {
      return out.toByteArray();
    }
    out.writeBytes(bytes("diff -u " + name("a/" + path) + " " + name("b/" + path) + "\n"));
    out.writeBytes(bytes("--- " + DiffPath.of("a/" + path) + "\n"));
    out.writeBytes(bytes("+++ " + DiffPath.of("b/" + path) + "\n"));
    int shift = 0;
    for (List<AbstractDelta<String>> hunk : hunks(deltas)) {
      shift = hunk(out, hunk, old, now, shift);
    }
    return out.toByteArray();
  }

  private static String name(String path) {
    return DiffPath.of(path).strip();
  }

  /** Deltas whose context would touch or overlap share a hunk. */
  private static List<List<AbstractDelta<String>>> hunks(List<AbstractDelta<String>> deltas) {
    List<List<AbstractDelta<String>>> hunks = new ArrayList<>();
    int end = Integer.MIN_VALUE;
    for (AbstractDelta<String> delta : deltas) {
      Chunk<String> source = delta.getSource();
      if (hunks.isEmpty() || source.getPosition() - end > 2 * CONTEXT) {
        hunks.add(new ArrayList<>());
      }
      hunks.get(hunks.size() - 1).add(delta);
      end = source.getPosition() + source.size();
    }
    return hunks;
  }

  private static int hunk(
      ByteArrayOutputStream out,
      List<AbstractDelta<String>> hunk,
      List<String> old,
      List<String> now,
      int shift) {
    int at = Math.max(0, hunk.get(0).getSource().getPosition() - CONTEXT);
    Chunk<String> last = hunk.get(hunk.size() - 1).getSource();
    int end = Math.min(old.size(), last.getPosition() + last.size() + CONTEXT);
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    int start = at;
    int grown = 0;
    for (AbstractDelta<String> delta : hunk) {
      Chunk<String> source = delta.getSource();
      Chunk<String> target = delta.getTarget();
      context(body, old, at, source.getPosition());
      source.getLines().forEach(line -> line(body, '-', line));
      target.getLines().forEach(line -> line(body, '+', line));
      grown += target.size() - source.size();
      at = source.getPosition() + source.size();
    }
    context(body, old, at, end);
    int oldCount = end - start;
    int newCount = oldCount + grown;
    out.writeBytes(
        bytes("@@ -" + range(start, oldCount) + " +" + range(start + shift, newCount) + " @@\n"));
    out.writeBytes(body.toByteArray());
    return shift + grown;
  }

  private static void context(ByteArrayOutputStream body, List<String> old, int from, int to) {
    for (int i = from; i < to; i++) {
      line(body, ' ', old.get(i));
    }
  }

  private static String range(int start, int count) {
    return count == 0 ? start + ",0" : count == 1 ? "" + (start + 1) : (start + 1) + "," + count;
  }

  private static void line(ByteArrayOutputStream out, char mark, String line) {
    out.write(mark);
    out.writeBytes(bytes(line));
    if (!line.endsWith("\n")) {
      out.write('\n');
      out.writeBytes(NO_NEWLINE);
    }
  }

  /** Each line with its line feed; one character a byte. */
  private static List<String> lines(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    List<String> lines = new ArrayList<>();
    int start = 0;
    for (int at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', start)) {
      lines.add(text.substring(start, at + 1));
      start = at + 1;
    }
    if (start < text.length()) {
      lines.add(text.substring(start));
    }
    return lines;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.ISO_8859_1);
  }
}
