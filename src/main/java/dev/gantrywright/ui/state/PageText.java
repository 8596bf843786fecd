package dev.gantrywright.ui.state;

import java.util.ArrayList;
import java.util.List;

/** A rule's page in pieces that a window can set: the Markdown that the pages use, no more. */
public final class PageText {
  private PageText() {}

  /** What a piece is. */
  public enum Kind {
    HEADING,
    TEXT,
    POINT,
    CODE
  }

  /** One paragraph, point of a list, heading or line of code. */
  public record Piece(Kind kind, String words) {}

  /** The words of the first heading; empty where the page has none. */
  public static String title(String page) {
    return page.lines()
        .filter(line -> line.startsWith("# "))
        .findFirst()
        .map(line -> plain(line.substring(2)))
        .orElse("");
  }

  /** The page without its title. */
  public static List<Piece> pieces(String page) {
    List<Piece> pieces = new ArrayList<>();
    StringBuilder text = new StringBuilder();
    boolean code = false;
    for (String line : page.lines().toList()) {
      if (line.startsWith("```")) {
        end(text, pieces);
        code = !code;
      } else if (code) {
        pieces.add(new Piece(Kind.CODE, line));
      } else if (line.startsWith("# ") || line.isBlank()) {
        end(text, pieces);
      } else if (line.startsWith("#")) {
        end(text, pieces);
        pieces.add(new Piece(Kind.HEADING, plain(line.replaceFirst("^#+ *", ""))));
      } else if (line.startsWith("- ")) {
        end(text, pieces);
        text.append("- ").append(line.substring(2));
      } else {
        text.append(text.isEmpty() ? "" : " ").append(line.strip());
      }
    }
    end(text, pieces);
    return pieces;
  }

  private static void end(StringBuilder text, List<Piece> pieces) {
    String words = text.toString();
    text.setLength(0);
    if (words.startsWith("- ")) {
      pieces.add(new Piece(Kind.POINT, plain(words.substring(2))));
    } else if (!words.isEmpty()) {
      pieces.add(new Piece(Kind.TEXT, plain(words)));
    }
  }

  /** Without the marks of emphasis, code and links; a link keeps its words and its address. */
  private static String plain(String words) {
    return words
        .replaceAll("\\[([^\\]]*)\\]\\(([^)]*)\\)", "$1 ($2)")
        .replace("**", "")
        .replace("`", "");
  }
}
