package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Remedies;
import dev.gantrywright.rules.Remedy;

/** A finding of the rule book as a note. */
final class FoundNote {
  private FoundNote() {}

  static MarginNote of(Finding finding) {
    boolean field = finding.path().indexOf(':') < 0;
    return new MarginNote(
        finding.id(),
        finding.slug(),
        finding.family().title(),
        Gravity.valueOf(finding.level().name()),
        finding.path(),
        field ? PlaceNames.field(finding.path()) : finding.path(),
        sentence(finding.evidence()),
        sentence(finding.summary()) + " " + Texts.of("note.source", finding.source()),
        finding.remedies().stream().map(FoundNote::fix).toList());
  }

  /** Begins with a capital and ends with a stop, as a note in a margin does. */
  private static String sentence(String words) {
    String text = words.strip();
    if (text.isEmpty()) {
      return text;
    }
    String begun = Character.toUpperCase(text.charAt(0)) + text.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }

  private static MarginNote.Fix fix(Remedy remedy) {
    MarginNote.Safety safety =
        remedy.applicable()
            ? MarginNote.Safety.valueOf(remedy.safety().name())
            : MarginNote.Safety.SHOW_ONLY;
    boolean names = remedy.edits().stream().anyMatch(edit -> edit instanceof Remedy.SetName);
    return new MarginNote.Fix(
        remedy.title(),
        safety,
        profile -> apply(remedy, profile),
        names ? map -> Remedies.apply(map, remedy) : null);
  }

  private static PrinterProfile apply(Remedy remedy, PrinterProfile profile) {
    PrinterProfile now = profile;
    for (Remedy.Edit edit : remedy.edits()) {
      if (edit instanceof Remedy.SetField set) {
        try {
          now = ProfileValues.with(now, set.path(), set.value());
        } catch (ProfileProblem refused) {
          // A remedy that the field does not take changes nothing; the note stays.
          return profile;
        }
      }
    }
    return now;
  }
}
