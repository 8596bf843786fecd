package dev.gantrywright.ui.theme;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The tones of one mode by token name, as {@code #rrggbb}. */
public final class Tones {
  private final Map<String, String> byName;

  private Tones(Map<String, String> byName) {
    this.byName = byName;
  }

  /** Reads the tokens that ship with the window. */
  public static Tones of(Mode mode) {
    try (InputStream in =
        Tones.class.getResourceAsStream("/dev/gantrywright/ui/theme/tokens.json")) {
      Map<String, String> byName = new LinkedHashMap<>();
      for (Map.Entry<String, JsonNode> tone :
          JsonMapper.shared().readTree(in).get("tones").properties()) {
        byName.put(tone.getKey(), tone.getValue().get(mode.word()).asString());
      }
      return new Tones(byName);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  public Set<String> names() {
    return byName.keySet();
  }

  /** The tone as {@code #rrggbb}. */
  public String hex(String name) {
    String hex = byName.get(name);
    if (hex == null) {
      throw new IllegalArgumentException("no tone " + name);
    }
    return hex;
  }

  /** The tone as opaque ARGB, for pictures that are drawn pixel by pixel. */
  public int argb(String name) {
    return 0xff000000 | Integer.parseInt(hex(name).substring(1), 16);
  }

  /** A style rule that names every tone {@code -gw-…}. */
  String css() {
    StringBuilder css = new StringBuilder(".root {\n");
    byName.forEach(
        (name, hex) -> css.append("  -gw-").append(name).append(": ").append(hex).append(";\n"));
    return css.append("}\n").toString();
  }

  /** The same as a stylesheet of its own, as a data URL. */
  public String stylesheet() {
    byte[] bytes = css().getBytes(StandardCharsets.UTF_8);
    return "data:text/css;base64," + Base64.getEncoder().encodeToString(bytes);
  }

  /** Contrast ratio of two tones after WCAG 2.2, "contrast ratio" and "relative luminance". */
  public double contrast(String one, String other) {
    double a = luminance(argb(one));
    double b = luminance(argb(other));
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  static double luminance(int rgb) {
    return 0.2126 * channel(rgb >> 16) + 0.7152 * channel(rgb >> 8) + 0.0722 * channel(rgb);
  }

  private static double channel(int shifted) {
    double c = (shifted & 0xff) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
