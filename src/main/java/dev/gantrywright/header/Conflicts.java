package dev.gantrywright.header;

import java.util.HashMap;
import java.util.Map;

/** Finds changes of one plan that ask for different things of the same place. */
final class Conflicts {
  private final Map<String, String> wanted = new HashMap<>();

  /** Why the change cannot stand beside an earlier one, or null; the change is remembered. */
  String with(Change change) {
    if (change instanceof Change.SetValue c) {
      return claim(c.name() + " value", c.value().strip(), c.name());
    } else if (change instanceof Change.SetElement c) {
      return claim(
          c.name() + " element " + c.path(), c.value().strip(), c.name() + " element " + c.path());
    } else if (change instanceof Change.SwitchOn c) {
      return claim(c.name() + " switch", "on", c.name());
    } else if (change instanceof Change.SwitchOff c) {
      return claim(c.name() + " switch", "off", c.name());
    } else if (change instanceof Change.SetKey c) {
      String key = "[" + c.section() + "] " + c.key();
      return claim(key, c.value(), key);
    }
    return null;
  }

  private String claim(String place, String value, String shown) {
    String earlier = wanted.putIfAbsent(place, value);
    return earlier == null || earlier.equals(value)
        ? null
        : shown + " conflicts with an earlier change of this plan, which asks for " + earlier;
  }
}
