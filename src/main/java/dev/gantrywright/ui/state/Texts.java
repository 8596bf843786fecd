package dev.gantrywright.ui.state;

import java.text.MessageFormat;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/** The window's words, from resource bundles, so that they can be translated. */
public final class Texts {
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("dev.gantrywright.ui.texts");

  private Texts() {}

  /** The text of a key, with {@code {0}} … filled in. */
  public static String of(String key, Object... values) {
    String pattern = BUNDLE.getString(key);
    return values.length == 0
        ? pattern
        : new MessageFormat(pattern, BUNDLE.getLocale()).format(values);
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
