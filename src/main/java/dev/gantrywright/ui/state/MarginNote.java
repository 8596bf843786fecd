package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * A finding as the margin shows it.
 *
 * @param id the rule's id
 * @param slug the rule's short name
 * @param family the rule's family
 * @param gravity how grave
 * @param path field path or file and line that it speaks of
 * @param place the same in words, "X steps/mm"
 * @param text what was found and what the figures are
 * @param source where the fact behind it stands
 * @param fixes changes that would settle it, the best first
 */
public record MarginNote(
    String id,
    String slug,
    String family,
    Gravity gravity,
    String path,
    String place,
    String text,
    String source,
    List<Fix> fixes) {
  public MarginNote {
    fixes = List.copyOf(fixes);
  }

  /** Tells one note from another across checks. */
  public String key() {
    return id + "@" + path;
  }

  /** Safety of a fix. */
  public enum Safety {
    SAFE,
    REVIEW,
    SHOW_ONLY
  }

  /**
   * A change that would settle the note.
   *
   * @param title what it does, "Use 80"
   * @param change the profile with it done
   * @param names the name map with it done; null where it changes the profile alone
   */
  public record Fix(
      String title,
      Safety safety,
      UnaryOperator<PrinterProfile> change,
      UnaryOperator<NameMap> names) {
    /** A change of the profile alone. */
    public Fix(String title, Safety safety, UnaryOperator<PrinterProfile> change) {
      this(title, safety, change, null);
    }
  }
}
