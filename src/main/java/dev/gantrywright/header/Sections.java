package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The section headings of a file, told from how its comment blocks are drawn. */
final class Sections {
  private static final int LONGEST = 100;

  /** Documentation commands that open a group with a title. */
  private static final Pattern COMMAND =
      Pattern.compile(
          "[\\\\@](?:name|section|subsection|defgroup|addtogroup|page)\\b\\s*:?\\s*(.+)");

  private static final Pattern LABEL =
      Pattern.compile("(?i)(?:section|part|group)\\s*(?:\\d+\\s*)?[:.-]\\s*(.+)");

  /** A title between, before or behind rulers on one line. */
  private static final Pattern RULED =
      Pattern.compile("(?:[=*#~_+-]{3,}\\s*)([^=*#~_+-].*?)\\s*[=*#~_+-]*");

  private static final Pattern RULED_BEHIND = Pattern.compile("([^=*#~_+-].*?)\\s*[=*#~_+-]{3,}");

  private record Heading(int offset, String title) {}

  private final List<Heading> headings;

  private Sections(List<Heading> headings) {
    this.headings = headings;
  }

  static Sections of(SourceFile file, CommentBlocks blocks) {
    List<Heading> found = new ArrayList<>();
    for (int i = 0; i < blocks.count(); i++) {
      Span block = blocks.block(i);
      String title = title(file.text(block.start(), block.end()));
      if (title != null) {
        found.add(new Heading(block.start(), title));
      }
    }
    return new Sections(List.copyOf(found));
  }

  /** Those of a file in which one definition has another text. */
  Sections moved(OneDefinition difference) {
    return new Sections(
        headings.stream()
            .map(at -> new Heading(difference.moved(at.offset()), at.title()))
            .toList());
  }

  /** The title that the offset stands under, or the empty string. */
  String at(int offset) {
    int low = 0;
    int high = headings.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (headings.get(middle).offset() <= offset) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == 0 ? "" : headings.get(low - 1).title();
  }

  /** The title that a comment block draws, or null if it is no heading. */
  static String title(String raw) {
    if (raw.length() > 4_000) {
      return null;
    }
    String[] lines = CommentText.narrowed(raw).split("\\r\\n|\\n|\\r", -1);
    int rulers = 0;
    List<String> words = new ArrayList<>();
    for (String line : lines) {
      String text = CommentText.plain(line);
      Matcher command = COMMAND.matcher(text);
      if (command.lookingAt()) {
        return bounded(label(command.group(1)));
      }
      boolean ruler = CommentText.isRuler(text) || text.isEmpty() && line.strip().length() > 4;
      rulers += ruler ? 1 : 0;
      if (!ruler && !text.isEmpty()) {
        words.add(text);
      }
    }
    if (words.isEmpty()) {
      return null;
    }
    if (rulers > 0 && words.size() <= 2) {
      return bounded(label(unruled(words.get(0))));
    }
    if (lines.length == 1) {
      String inner = lines[0].strip();
      inner = inner.replaceFirst("^(?://|/\\*)", "").replaceFirst("\\*/$", "").strip();
      Matcher ruled = RULED.matcher(inner);
      if (ruled.matches()) {
        return bounded(label(ruled.group(1)));
      }
      Matcher behind = RULED_BEHIND.matcher(inner);
      if (behind.matches()) {
        return bounded(label(behind.group(1)));
      }
    }
    Matcher labelled = LABEL.matcher(words.get(0));
    return words.size() == 1 && labelled.matches() ? bounded(labelled.group(1)) : null;
  }

  private static String unruled(String text) {
    Matcher ruled = RULED.matcher(text);
    return ruled.matches() ? ruled.group(1) : text;
  }

  private static String label(String text) {
    Matcher labelled = LABEL.matcher(text);
    return labelled.matches() ? labelled.group(1).strip() : text.strip();
  }

  private static String bounded(String title) {
    return title.isEmpty() || title.length() > LONGEST ? null : title;
  }
}
