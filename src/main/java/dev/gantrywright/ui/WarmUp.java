package dev.gantrywright.ui;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Loads the classes that the window needs until the first printer is shown, beside the start of the
 * toolkit, which leaves a core idle. Nothing is initialised here: the toolkit does that in its own
 * order. The list is in the order of need, written by {@code docs/benchmarks/window.sh classes}.
 */
final class WarmUp {
  private static final String LIST = "first-classes.txt";

  private WarmUp() {}

  /** Begins, and does not wait. */
  static void begin() {
    Thread loader = new Thread(WarmUp::load, "classes");
    loader.setDaemon(true);
    loader.start();
  }

  /** The names that ship with the window. */
  static List<String> names() throws IOException {
    try (InputStream in = WarmUp.class.getResourceAsStream(LIST);
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return lines.lines().toList();
    }
  }

  /** How many constructors were looked at; the looking is what links. */
  private static int load() {
    int constructors = 0;
    try {
      for (String name : names()) {
        constructors += link(name);
      }
    } catch (IOException unread) {
      // They are loaded when they are needed, then.
      return constructors;
    }
    return constructors;
  }

  private static int link(String name) {
    try {
      Class<?> loaded = Class.forName(name, false, WarmUp.class.getClassLoader());
      return loaded.getDeclaredConstructors().length;
    } catch (ClassNotFoundException | LinkageError missing) {
      // Another version may do without it; it is loaded when it is needed, or not at all.
      return 0;
    }
  }
}
