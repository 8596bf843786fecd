package dev.gantrywright.header;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** What GNU C answers where a condition asks it for its abilities. */
final class CompilerAnswers {
  private static final Map<String, Long> ATTRIBUTES = attributes();

  private CompilerAnswers() {}

  private static Map<String, Long> attributes() {
    Map<String, Long> out = new HashMap<>();
    try (InputStream in = CompilerAnswers.class.getResourceAsStream("attributes.txt");
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.US_ASCII))) {
      String line;
      while ((line = lines.readLine()) != null) {
        int blank = line.indexOf(' ');
        if (!line.startsWith("#") && blank > 0) {
          out.put(line.substring(0, blank), Long.valueOf(line.substring(blank + 1)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Map.copyOf(out);
  }

  /** The value of {@code query(argument)}. */
  static CValue answer(String query, String argument) {
    String name = argument.strip();
    return switch (query) {
      case "__has_builtin" -> CValue.of(builtin(name));
      case "__has_attribute" -> CValue.signed(ATTRIBUTES.getOrDefault(bare(name), 0L));
      default -> CValue.signed(scoped(name));
    };
  }

  private static boolean builtin(String name) {
    return name.startsWith("__builtin_")
        || name.startsWith("__sync_")
        || name.startsWith("__atomic_");
  }

  /**
   * A name without prefix is a standard attribute, which has a date; {@code gnu::} has the rest.
   */
  private static long scoped(String name) {
    int colons = name.indexOf("::");
    if (colons >= 0) {
      boolean gnu = bare(name.substring(0, colons).strip()).equals("gnu");
      return gnu && ATTRIBUTES.containsKey(bare(name.substring(colons + 2).strip())) ? 1 : 0;
    }
    long value = ATTRIBUTES.getOrDefault(bare(name), 0L);
    return value > 1 ? value : 0;
  }

  private static String bare(String name) {
    boolean dressed = name.length() > 4 && name.startsWith("__") && name.endsWith("__");
    return dressed ? name.substring(2, name.length() - 2) : name;
  }
}
