package dev.gantrywright.ui.state;

import java.text.MessageFormat;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;

/** The window's words, from resource bundles, so that they can be translated. */
public final class Texts {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("dev.gantrywright.ui.texts");

  private static final Map<String, MessageFormat> FORMATS = new ConcurrentHashMap<>();

  private Texts() {}

  /** The text of a key, with {@code {0}} … filled in. */
  public static String of(String key, Object... values) {
    String pattern = BUNDLE.getString(key);
    if (values.length == 0) {
      return pattern;
    }
    MessageFormat format =
        FORMATS.computeIfAbsent(key, k -> new MessageFormat(pattern, BUNDLE.getLocale()));
    Object[] plain = values.clone();
    for (int i = 0; i < plain.length; i++) {
      // Below a thousand no language groups the figures: what a format would make, without one.
      boolean small = plain[i] instanceof Integer number && number >= 0 && number < 1000;
      boolean chosen = pattern.contains("{" + i + ",");
      plain[i] = small && !chosen ? plain[i].toString() : plain[i];
    }
    synchronized (format) {
      return format.format(plain);
    }
  }

  /** Whether the bundle has a text of this key. */
  public static boolean has(String key) {
    return BUNDLE.containsKey(key);
  }

  /** The text of a key, or another where the bundle has none. */
  public static String orElse(String key, String otherwise) {
    try {
      return BUNDLE.getString(key);
    } catch (MissingResourceException none) {
      return otherwise;
    }
  }
}
