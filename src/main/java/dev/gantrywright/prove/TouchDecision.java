package dev.gantrywright.prove;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Decides from the whole press matrix what is the matter with each endstop. */
final class TouchDecision {
  /**
   * Longest bounce of a sound switch: 6.2 ms, the longest of 18 switches but for two faulty ones,
   * in J. Ganssle, A Guide to Debouncing (memory).
   */
  static final long BOUNCE_LIMIT_NANOS = 6_200_000L;

  private static final String POWER_OFF = "Switch the power off before you pull a connector: ";

  private final List<String> ends;
  private final Map<String, Boolean> rest;
  private final Map<String, Map<String, PressEffect>> matrix;
  private final Map<String, Boolean> inverted;
  private final long sampleNanos;

  /**
   * @param inverted what the profile says for each endstop
   * @param sampleNanos time between samples: what is shorter cannot be seen
   */
  TouchDecision(
      List<String> ends,
      Map<String, Boolean> rest,
      Map<String, Map<String, PressEffect>> matrix,
      Map<String, Boolean> inverted,
      long sampleNanos) {
    this.ends = ends;
    this.rest = rest;
    this.matrix = matrix;
    this.inverted = inverted;
    this.sampleNanos = sampleNanos;
  }

  TouchReport report() {
    return new TouchReport(
        ends.stream().map(this::judge).toList(), new LinkedHashMap<>(matrix), rest);
  }

  private TouchResult judge(String end) {
    if (!matrix.containsKey(end)) {
      return result(end, TouchVerdict.NOT_TESTED, "", "press it in another round");
    }
    Set<String> held = held(end);
    PressEffect own = matrix.get(end).getOrDefault(end, PressEffect.NONE);
    if (held.contains(end)) {
      return moved(end, held, own);
    }
    if (held.size() == 1) {
      String other = held.iterator().next();
      boolean mutual = held(other).contains(end);
      return result(
          end,
          TouchVerdict.SWAPPED,
          other,
          POWER_OFF
              + (mutual
                  ? "change the plugs of "
                      + end
                      + " and "
                      + other
                      + " over, or their pins in the description"
                  : "the plug of " + end + " is in the input of " + other));
    }
    if (noiseFrom(end).isPresent()) {
      return result(
          end,
          TouchVerdict.NOISY,
          "",
          "it changes wildly when pressed: look at plug, wire and pull");
    }
    return still(end);
  }

  private TouchResult moved(String end, Set<String> held, PressEffect own) {
    Optional<String> partner =
        held.stream().filter(o -> !o.equals(end) && held(o).contains(end)).findFirst();
    if (partner.isPresent()) {
      return result(
          end,
          TouchVerdict.SHARED,
          partner.get(),
          POWER_OFF
              + end
              + " and "
              + partner.get()
              + " are wired to one input; give each its own pin");
    }
    if (Boolean.TRUE.equals(rest.get(end))) {
      boolean now = Boolean.TRUE.equals(inverted.get(end));
      return new TouchResult(
          end,
          TouchVerdict.INVERTED,
          "",
          own.longestBounceNanos(),
          "it reads triggered when nothing touches it: endstops."
              + end
              + ".inverted must be "
              + !now
              + " instead of "
              + now
              + " (or the contact is not as described)",
          Optional.of(
              new TouchResult.Remedy("endstops." + end + ".inverted", String.valueOf(!now))));
    }
    Optional<String> noise = noiseFrom(end);
    if (noise.isPresent()) {
      return result(
          end,
          TouchVerdict.NOISY,
          noise.get(),
          "it changes while "
              + noise.get()
              + " is pressed: keep its wire away from motor wires,"
              + " use a normally closed contact or a stronger pull-up");
    }
    if (own.longestBounceNanos() > Math.max(BOUNCE_LIMIT_NANOS, sampleNanos)) {
      return result(
          end,
          TouchVerdict.BOUNCING,
          "",
          String.format(
              java.util.Locale.ROOT,
              "it chatters for %.0f ms, a sound switch for %.1f ms at most: look at plug and switch",
              own.longestBounceNanos() / 1e6,
              BOUNCE_LIMIT_NANOS / 1e6));
    }
    return result(end, TouchVerdict.WORKS, "", "");
  }

  private TouchResult still(String end) {
    return Boolean.TRUE.equals(rest.get(end))
        ? result(
            end,
            TouchVerdict.STUCK,
            "",
            POWER_OFF
                + "it reads triggered all the time: look for a wire that is off a normally"
                + " closed contact, a short circuit, or a switch that hangs")
        : result(
            end,
            TouchVerdict.NEVER_CHANGES,
            "",
            POWER_OFF
                + "it reads open all the time: look at plug and wire, at the pull of its"
                + " input, and whether a PNP sensor is on a pull-up or an NPN sensor on a pull-down");
  }

  /** The other endstop whose press makes this one noisy. */
  private Optional<String> noiseFrom(String end) {
    return ends.stream()
        .filter(o -> matrix.containsKey(o))
        .filter(o -> matrix.get(o).getOrDefault(end, PressEffect.NONE).noisy())
        .findFirst();
  }

  private Set<String> held(String pressed) {
    Set<String> held = new TreeSet<>();
    matrix
        .getOrDefault(pressed, Map.of())
        .forEach(
            (end, effect) -> {
              if (effect.held()) {
                held.add(end);
              }
            });
    return held;
  }

  private TouchResult result(String end, TouchVerdict verdict, String other, String advice) {
    long bounce =
        matrix.getOrDefault(end, Map.of()).getOrDefault(end, PressEffect.NONE).longestBounceNanos();
    return new TouchResult(end, verdict, other, bounce, advice, Optional.empty());
  }
}
