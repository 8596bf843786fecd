package dev.gantrywright.rules;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Waiver;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Findings sorted by the profile's waivers.
 *
 * @param open what nobody has waived, or what was waived on other facts
 * @param waived what stands aside, with the reason
 * @param returned the findings of {@code open} that had been waived before their evidence changed
 * @param idle keys of waivers that no finding answers to any more
 */
public record Waivers(
    List<Finding> open, Map<Finding, Waiver> waived, Set<Finding> returned, List<String> idle) {

  /** Sorts the findings; a waiver holds only while the finding's evidence is what it was. */
  public static Waivers sort(PrinterProfile profile, List<Finding> findings) {
    if (profile.waivers().isEmpty()) {
      return new Waivers(List.copyOf(findings), Map.of(), Set.of(), List.of());
    }
    List<Finding> open = new ArrayList<>();
    Map<Finding, Waiver> waived = new LinkedHashMap<>();
    Set<Finding> returned = new HashSet<>();
    List<String> idle = new ArrayList<>(profile.waivers().keySet());
    for (Finding finding : findings) {
      Waiver waiver = profile.waivers().get(finding.key());
      idle.remove(finding.key());
      if (waiver != null && finding.evidence().equals(waiver.evidence())) {
        waived.put(finding, waiver);
      } else {
        open.add(finding);
        if (waiver != null) {
          returned.add(finding);
        }
      }
    }
    return new Waivers(List.copyOf(open), waived, Set.copyOf(returned), List.copyOf(idle));
  }

  /**
   * The waiver that sets this finding aside; store it in the profile under {@link Finding#key()}.
   *
   * @param reason the user's words; a waiver without a reason is refused
   * @param date ISO date
   */
  public static Waiver waive(Finding finding, String reason, String date) {
    if (reason == null || reason.isBlank()) {
      throw new IllegalArgumentException("a waiver needs a reason");
    }
    return new Waiver(reason.strip(), finding.evidence(), date, null);
  }
}
