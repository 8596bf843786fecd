package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Reads a unified diff back as a plan of edits. Lines are compared as bytes, each with its own line
 * end; a hunk must fit where it says, exactly.
 */
public final class UnifiedDiffReader {
  private static final String NO_END = "\\ No newline at end of file";

  private final List<String> lines;
  private final boolean back;
  private int at;

  private UnifiedDiffReader(List<String> lines, boolean back) {
    this.lines = lines;
    this.back = back;
  }

  /**
   * The plan that the diff describes.
   *
   * @param folder the folder that the diff was made for
   * @param diff its bytes, paths with or without {@code a/} and {@code b/} before them
   * @throws IllegalArgumentException with one clear line when the diff is malformed or does not fit
   */
  public static EditPlan read(FirmwareFolder folder, byte[] diff) {
    return new UnifiedDiffReader(split(latin1(diff)), false).plan(folder);
  }

  /**
   * The plan that takes the diff back out of a folder that has it.
   *
   * @throws IllegalArgumentException with one clear line when the diff is malformed or does not fit
   */
  public static EditPlan readBack(FirmwareFolder folder, byte[] diff) {
    return new UnifiedDiffReader(split(latin1(diff)), true).plan(folder);
  }

  private static String latin1(byte[] diff) {
    return new String(diff, StandardCharsets.ISO_8859_1);
  }

  /** Lines with their line feeds, which end a line of the diff even where a CR stands before. */
  private static List<String> split(String text) {
    List<String> out = new ArrayList<>();
    int from = 0;
    while (from < text.length()) {
      int end = text.indexOf('\n', from);
      end = end < 0 ? text.length() : end + 1;
      out.add(text.substring(from, end));
      from = end;
    }
    return out;
  }

  private EditPlan plan(FirmwareFolder folder) {
    TreeMap<String, FileEdits> files = new TreeMap<>();
    while (at < lines.size()) {
      if (!lines.get(at).startsWith("--- ")
          || at + 1 >= lines.size()
          || !lines.get(at + 1).startsWith("+++ ")) {
        at++;
        continue;
      }
      String path = path(folder, lines.get(at), lines.get(at + 1));
      at += 2;
      byte[] input = folder.bytesOf(path);
      if (files.containsKey(path)) {
        throw new IllegalArgumentException(path + " stands twice in the diff");
      }
      files.put(path, FileEdits.of(path, input, hunks(path, input)));
    }
    if (files.isEmpty()) {
      throw new IllegalArgumentException("this is no unified diff: no line starts with ---");
    }
    return EditPlan.ofEdits(folder, files);
  }

  private static String path(FirmwareFolder folder, String before, String after) {
    for (String line : List.of(after, before)) {
      String name = utf8(line.substring(4)).strip();
      int tab = name.indexOf('\t');
      name = tab < 0 ? name : name.substring(0, tab);
      int slash = name.indexOf('/');
      String shorter = slash < 0 ? name : name.substring(slash + 1);
      for (String candidate : List.of(name, shorter)) {
        if (folder.bytesOf(candidate) != null) {
          return candidate;
        }
      }
    }
    throw new IllegalArgumentException(
        "the folder has no header or build settings " + utf8(after.substring(4)).strip());
  }

  private static String utf8(String latin1) {
    return new String(latin1.getBytes(StandardCharsets.ISO_8859_1), StandardCharsets.UTF_8);
  }

  private List<Edit> hunks(String path, byte[] input) {
    List<String> old = split(new String(input, StandardCharsets.ISO_8859_1));
    int[] starts = new int[old.size() + 1];
    for (int i = 0; i < old.size(); i++) {
      starts[i + 1] = starts[i] + old.get(i).length();
    }
    List<Edit> edits = new ArrayList<>();
    while (at < lines.size() && lines.get(at).startsWith("@@ ")) {
      hunk(path, old, starts, edits);
    }
    return edits;
  }

  private void hunk(String path, List<String> old, int[] starts, List<Edit> edits) {
    String head = lines.get(at++);
    int[] forward = range(path, head);
    int[] range = back ? new int[] {forward[2], forward[3], forward[0], forward[1]} : forward;
    int line = range[1] == 0 ? range[0] : range[0] - 1;
    if (line < 0 || line > old.size()) {
      throw new IllegalArgumentException(
          path + ": the file has no line " + range[0] + " as the diff says; read the folder again");
    }
    int left = range[1];
    int right = range[3];
    StringBuilder added = new StringBuilder();
    int changed = line;
    while (left > 0 || right > 0) {
      if (at >= lines.size()) {
        throw new IllegalArgumentException(path + ": the diff breaks off inside a hunk");
      }
      String row = lines.get(at++);
      boolean bare = row.equals("\n") || row.equals("\r\n"); // an empty line that lost its blank
      char sign = bare ? ' ' : sign(row.charAt(0));
      String text = ended(bare ? row : row.substring(1));
      if (sign == '+') {
        added.append(text);
        right--;
        continue;
      }
      if (sign != ' ' && sign != '-') {
        throw new IllegalArgumentException(
            path + ": \"" + utf8(row).strip() + "\" is no line of a hunk; the diff is damaged");
      }
      if (line >= old.size() || !old.get(line).equals(text)) {
        throw new IllegalArgumentException(
            path + ": line " + (line + 1) + " is not what the diff expects; read the folder again");
      }
      left--;
      if (sign != '-') {
        right--;
        put(starts[changed], starts[line], added, edits);
        changed = line + 1;
      }
      line++;
    }
    put(starts[changed], starts[line], added, edits);
  }

  /** What a line is to this reading: going back, what was added is what stands there. */
  private char sign(char written) {
    if (!back) {
      return written;
    }
    return written == '+' ? '-' : written == '-' ? '+' : written;
  }

  private static void put(int from, int to, StringBuilder added, List<Edit> edits) {
    if (to > from || added.length() > 0) {
      byte[] bytes = added.toString().getBytes(StandardCharsets.ISO_8859_1);
      edits.add(new Edit(new Span(from, to), bytes));
      added.setLength(0);
    }
  }

  /** The line without its line feed where the diff says that the file has none. */
  private String ended(String text) {
    if (at < lines.size() && lines.get(at).startsWith(NO_END.substring(0, 2))) {
      at++;
      return text.endsWith("\n") ? text.substring(0, text.length() - 1) : text;
    }
    return text;
  }

  /** Old start and count, new start and count. */
  private static int[] range(String path, String head) {
    String[] words = head.split(" ");
    try {
      String[] a = words[1].substring(1).split(",");
      String[] b = words[2].substring(1).split(",");
      return new int[] {
        Integer.parseInt(a[0]),
        a.length > 1 ? Integer.parseInt(a[1]) : 1,
        Integer.parseInt(b[0].strip()),
        b.length > 1 ? Integer.parseInt(b[1].strip()) : 1
      };
    } catch (RuntimeException e) {
      throw new IllegalArgumentException(path + ": \"" + head.strip() + "\" is no hunk", e);
    }
  }
}
