package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Finds changes of one plan that ask for different things of the same place, and names both. */
final class Conflicts {
  private record Claim(int number, Change change, String place, List<Integer> path, String value) {}

  private final FirmwareFolder folder;
  private final Map<String, List<Claim>> claims = new HashMap<>();

  Conflicts(FirmwareFolder folder) {
    this.folder = folder;
  }

  /**
   * Why the change cannot stand beside an earlier one, or null; then the change is remembered.
   *
   * @param number the change's place in the plan, counted from 1
   */
  String with(int number, Change change) {
    if (change instanceof Change.SetValue c) {
      return claim("value of " + c.name(), number, c, List.of(), c.value().strip());
    } else if (change instanceof Change.SetElement c) {
      return claim("value of " + c.name(), number, c, c.path(), c.value().strip());
    } else if (change instanceof Change.SwitchOn c) {
      return claim("switch " + c.name(), number, c, List.of(), "on");
    } else if (change instanceof Change.SwitchOff c) {
      return claim("switch " + c.name(), number, c, List.of(), "off");
    } else if (change instanceof Change.SetKey c) {
      return claim("key [" + c.section() + "] " + c.key(), number, c, List.of(), c.value());
    }
    return null;
  }

  private String claim(String place, int number, Change change, List<Integer> path, String value) {
    List<Claim> earlier = claims.computeIfAbsent(place, p -> new ArrayList<>());
    Claim now = new Claim(number, change, place, path, value);
    for (Claim claim : earlier) {
      if (differ(claim, now)) {
        return words(claim, now);
      }
    }
    earlier.add(now);
    return null;
  }

  /** A list or value as a whole holds every element of it. */
  private static boolean differ(Claim a, Claim b) {
    int shorter = Math.min(a.path().size(), b.path().size());
    if (!a.path().subList(0, shorter).equals(b.path().subList(0, shorter))) {
      return false;
    }
    return a.path().size() != b.path().size() || !a.value().equals(b.value());
  }

  private String words(Claim earlier, Claim now) {
    return named(now)
        + " conflicts with "
        + named(earlier)
        + ": both are about the "
        + now.place()
        + where(now.change())
        + "; change "
        + earlier.number()
        + " stands";
  }

  private static String named(Claim claim) {
    String cause = claim.change().cause();
    return "change "
        + claim.number()
        + " ("
        + (cause.isBlank() ? asked(claim.change(), claim.value()) : cause)
        + ")";
  }

  private static String asked(Change change, String value) {
    if (change instanceof Change.SetValue c) {
      return c.name() + " = " + value;
    } else if (change instanceof Change.SetElement c) {
      StringBuilder name = new StringBuilder(c.name());
      c.path().forEach(index -> name.append('[').append(index).append(']'));
      return name + " = " + value;
    } else if (change instanceof Change.SetKey c) {
      return "[" + c.section() + "] " + c.key() + " = " + value;
    } else if (change instanceof Change.SwitchOn c) {
      return c.name() + " on";
    } else if (change instanceof Change.SwitchOff c) {
      return c.name() + " off";
    }
    return "";
  }

  private String where(Change change) {
    List<String> places = new ArrayList<>();
    if (change instanceof Change.SetKey c) {
      for (IniDocument document : folder.buildSettings()) {
        document
            .entry(c.section(), c.key())
            .ifPresent(entry -> places.add(document.path() + ":" + entry.line()));
      }
    } else {
      List<Setting> all = folder.named(name(change));
      List<Setting> live = all.stream().filter(Setting::live).toList();
      if (!all.isEmpty()) {
        places.add(Targets.places(live.isEmpty() ? all : live));
      }
    }
    return places.isEmpty() ? "" : " at " + String.join(", ", places);
  }

  private static String name(Change change) {
    if (change instanceof Change.SetValue c) {
      return c.name();
    } else if (change instanceof Change.SetElement c) {
      return c.name();
    } else if (change instanceof Change.SwitchOn c) {
      return c.name();
    }
    return ((Change.SwitchOff) change).name();
  }
}
