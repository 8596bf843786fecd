package dev.gantrywright.rules;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Applies remedies. The input is never changed; what comes back is a new one. */
public final class Remedies {
  /** How many times "apply all" looks again before it gives up. */
  public static final int MOST_ROUNDS = 10;

  private Remedies() {}

  /**
   * What "apply all" did.
   *
   * @param input what is left
   * @param applied the findings settled, with the remedy taken for each
   * @param settled false where remedies kept turning up until the last round
   */
  public record Outcome(CheckInput input, List<Applied> applied, boolean settled) {}

  /** One remedy taken. */
  public record Applied(Finding finding, Remedy remedy) {}

  /**
   * The input with every edit of the remedy made.
   *
   * @throws ProfileProblem where a field does not take the value; nothing is changed
   */
  public static CheckInput apply(CheckInput input, Remedy remedy) throws ProfileProblem {
    PrinterProfile profile = input.profile();
    for (Remedy.Edit edit : remedy.edits()) {
      if (edit instanceof Remedy.SetField set) {
        profile = ProfileValues.with(profile, set.path(), set.value());
      }
    }
    NameMap names = input.names() == null ? null : apply(input.names(), remedy);
    return input.with(profile).with(names);
  }

  /** The name map with the remedy's corrections of it made. */
  public static NameMap apply(NameMap map, Remedy remedy) {
    NameMap names = map;
    for (Remedy.Edit edit : remedy.edits()) {
      if (edit instanceof Remedy.SetName set) {
        names =
            set.macro() == null
                ? names.without(set.path())
                : names.with(set.path(), moved(names.fields().get(set.path()), set));
      }
    }
    return names;
  }

  /**
   * Takes the first safe remedy of every open finding, round by round, until none is left.
   *
   * @throws ProfileProblem where a remedy offers a value that its field does not take
   */
  public static Outcome applySafe(RuleBook book, CheckInput input) throws ProfileProblem {
    return applyAll(book, input, Safety.SAFE);
  }

  /**
   * Takes the first applicable remedy of every open finding that is at least as safe as asked for,
   * round by round, until none is left. Anything but {@link Safety#SAFE} is for somebody who has
   * looked at each of them.
   *
   * @throws ProfileProblem where a remedy offers a value that its field does not take
   */
  public static Outcome applyAll(RuleBook book, CheckInput input, Safety least)
      throws ProfileProblem {
    CheckInput now = input;
    List<Applied> applied = new ArrayList<>();
    for (int round = 0; round < MOST_ROUNDS; round++) {
      boolean any = false;
      for (Finding finding : Waivers.sort(now.profile(), book.check(now)).open()) {
        Optional<Remedy> remedy = first(finding, least);
        if (remedy.isPresent()) {
          now = apply(now, remedy.get());
          applied.add(new Applied(finding, remedy.get()));
          any = true;
        }
      }
      if (!any) {
        return new Outcome(now, List.copyOf(applied), true);
      }
    }
    return new Outcome(now, List.copyOf(applied), false);
  }

  /** The entry at its new place; how values are spelled stays as it was. */
  private static NameEntry moved(NameEntry before, Remedy.SetName set) {
    if (before == null) {
      return NameEntry.chosen(set.macro(), set.element(), set.file(), set.line());
    }
    return before.moved(set.macro(), set.element(), set.file(), set.line());
  }

  private static Optional<Remedy> first(Finding finding, Safety least) {
    return finding.remedies().stream()
        .filter(remedy -> remedy.applicable() && remedy.safety().compareTo(least) <= 0)
        .findFirst();
  }
}
