package dev.gantrywright.prove;

import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.DialectFile;
import dev.gantrywright.machine.LinkSettings;
import java.util.HashMap;
import java.util.Map;

/** The dialect of one printer: the standard one with the profile's {@code link} section over it. */
public final class ProfileDialect {
  private ProfileDialect() {}

  /**
   * @throws IllegalArgumentException with one clear line when an entry has the wrong type or range
   */
  public static Dialect of(LinkSettings link) {
    Map<String, Object> over = new HashMap<>(link.more());
    put(over, "endstopQuery", link.endstopQuery());
    put(over, "settingsQuery", link.settingsQuery());
    put(over, "identityQuery", link.identityQuery());
    put(over, "stop", link.stop());
    if (!link.triggeredWords().isEmpty()) {
      over.put("triggeredWords", link.triggeredWords());
    }
    if (!link.openWords().isEmpty()) {
      over.put("openWords", link.openWords());
    }
    over.put("endstopNames", link.endstopNames());
    return DialectFile.with(over);
  }

  private static void put(Map<String, Object> over, String name, String value) {
    if (value != null) {
      over.put(name, value);
    }
  }
}
