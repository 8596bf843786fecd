package dev.gantrywright.documentation;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One page of the documentation, as a forge shows it: prose, fenced blocks, headings, links.
 *
 * @param file relative to the project's folder
 */
record MarkdownPage(Path file, List<String> lines) {
  private static final Pattern FENCE = Pattern.compile("^ {0,3}(`{3,}|~{3,})\\s*(.*)$");
  private static final Pattern LINK =
      Pattern.compile("(!?)\\[((?:[^\\[\\]]|\\[[^\\]]*\\])*)\\]\\(([^()\\s]*)\\)");
  private static final Pattern HEADING = Pattern.compile("^#{1,6} (.*?)#*\\s*$");

  /**
   * A link or picture.
   *
   * @param line counted from 1
   */
  record Link(int line, boolean picture, String text, String target) {}

  /**
   * A fenced block.
   *
   * @param line of its opening fence, counted from 1
   * @param info what stands behind the fence
   */
  record Block(int line, String info, List<String> lines) {}

  static MarkdownPage read(Path file) {
    try {
      return new MarkdownPage(file, Files.readAllLines(file));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** README.md, DEVELOPERS.md and everything under docs, sorted. */
  static List<MarkdownPage> all() {
    try (Stream<Path> walk = Files.walk(Path.of("docs"))) {
      return Stream.concat(
              Stream.of(Path.of("README.md"), Path.of("DEVELOPERS.md")),
              walk.filter(file -> file.toString().endsWith(".md")).sorted())
          .map(MarkdownPage::read)
          .toList();
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      Matcher open = FENCE.matcher(lines.get(i));
      if (open.matches()) {
        int end = closing(i, open.group(1));
        blocks.add(new Block(i + 1, open.group(2).strip(), lines.subList(i + 1, end)));
        i = end;
      }
    }
    return blocks;
  }

  private int closing(int open, String fence) {
    int end = open + 1;
    while (end < lines.size() && !lines.get(end).strip().matches(fence + "+")) {
      end++;
    }
    return end;
  }

  /** The lines outside fenced blocks; inside them empty ones, so that numbers stay. */
  private List<String> prose() {
    List<String> prose = new ArrayList<>(lines);
    for (Block block : blocks()) {
      int last = Math.min(block.line() + block.lines().size(), lines.size() - 1);
      for (int i = block.line() - 1; i <= last; i++) {
        prose.set(i, "");
      }
    }
    return prose;
  }

  List<Link> links() {
    List<Link> links = new ArrayList<>();
    List<String> prose = prose();
    for (int i = 0; i < prose.size(); i++) {
      String line = prose.get(i).replaceAll("(`+)[^`]+\\1(?!\\))(?!\\])", "``");
      Matcher link = LINK.matcher(line);
      while (link.find()) {
        links.add(new Link(i + 1, !link.group(1).isEmpty(), link.group(2), link.group(3)));
        Matcher inner = LINK.matcher(link.group(2));
        while (inner.find()) {
          links.add(new Link(i + 1, !inner.group(1).isEmpty(), inner.group(2), inner.group(3)));
        }
      }
    }
    return links;
  }

  /** The anchors of the headings, as forges make them; a second one of a name gets a number. */
  Set<String> anchors() {
    Map<String, Integer> seen = new HashMap<>();
    Set<String> anchors = new TreeSet<>();
    for (String line : prose()) {
      Matcher heading = HEADING.matcher(line);
      if (heading.matches()) {
        String anchor = anchor(heading.group(1));
        int times = seen.merge(anchor, 1, Integer::sum);
        anchors.add(times == 1 ? anchor : anchor + "-" + (times - 1));
      }
    }
    return anchors;
  }

  static String anchor(String heading) {
    String text = heading.replaceAll("!?\\[([^\\]]*)\\]\\([^)]*\\)", "$1").strip();
    return text.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}\\-_ ]", "").replace(' ', '-');
  }
}
