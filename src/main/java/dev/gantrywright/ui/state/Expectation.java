package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What endstops should read now, against what they read. */
public final class Expectation {
  private Expectation() {}

  /** What this end should read: triggered while it is touched, open otherwise. */
  public static ContactState expected(LinkDesk link, String end) {
    return link.touched().get().contains(end) ? ContactState.TRIGGERED : ContactState.OPEN;
  }

  /** Fitted ends whose state is known and not the expected one. */
  public static List<String> disagreeing(PrinterProfile profile, LinkDesk link) {
    List<String> wrong = new ArrayList<>();
    Map<String, ContactState> known = link.seen();
    for (String end : Endstops.fitted(profile)) {
      ContactState seen = known.getOrDefault(end, ContactState.UNKNOWN);
      if (seen != ContactState.UNKNOWN && seen != expected(link, end)) {
        wrong.add(end);
      }
    }
    return wrong;
  }

  /** The margin note of an end that disagrees. */
  public static MarginNote note(PrinterProfile profile, LinkDesk link, String end) {
    String path = "endstops." + end + ".inverted";
    Endstop endstop = profile.endstops().get(end);
    boolean other = !Boolean.TRUE.equals(endstop.inverted());
    String word = Texts.of(other ? "value.yes" : "value.no");
    String name = PlaceNames.endstop(end);
    boolean touched = link.touched().get().contains(end);
    String text =
        Texts.of(touched ? "prove.silent" : "prove.early", name, link.live().get().of(end).word());
    // Firmware from before the last edits says nothing about them: it is loaded again first.
    boolean old = link.built() != null && !link.built().endstops().equals(profile.endstops());
    MarginNote.Fix fix =
        new MarginNote.Fix(
            Texts.of("prove.invert", word),
            MarginNote.Safety.REVIEW,
            now -> {
              try {
                return ProfileValues.with(now, path, other);
              } catch (ProfileProblem impossible) {
                throw new IllegalStateException(impossible);
              }
            });
    return new MarginNote(
        "prove",
        "endstop-" + end,
        "prove",
        Gravity.ERROR,
        "endstops." + end,
        name,
        old ? text + " " + Texts.of("prove.oldFirmware") : text,
        Texts.of("prove.why"),
        old ? List.of() : List.of(fix));
  }
}
