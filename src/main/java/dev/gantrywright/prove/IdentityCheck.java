package dev.gantrywright.prove;

import dev.gantrywright.prove.Check.Family;
import dev.gantrywright.prove.Check.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Compares what the firmware says of itself with what it should say. */
public final class IdentityCheck {
  private IdentityCheck() {}

  /**
   * Looks for each expected text, in any case and spacing, somewhere in the identity reply.
   *
   * @param expected what it is (name, version, date, hash) to the text
   * @param identity the reply
   */
  public static List<Check> judge(Map<String, String> expected, List<String> identity) {
    String all = squeezed(String.join(" ", identity));
    List<Check> checks = new ArrayList<>();
    expected.forEach(
        (what, text) -> {
          boolean there = all.contains(squeezed(text));
          checks.add(
              new Check(
                  Family.IDENTITY,
                  what,
                  there ? Verdict.PASS : Verdict.FAIL,
                  text,
                  there
                      ? text
                      : identity.isEmpty() ? "no identity reported" : String.join(" / ", identity),
                  there
                      ? ""
                      : "another firmware is on the board than the one that was built; load it again"));
        });
    return checks;
  }

  /**
   * The same for what the record says that the firmware was given. Not every firmware tells the
   * machine's name: that one may be missing.
   *
   * @param recorded what it is to the text; {@code name} is the machine's own name
   */
  public static List<Check> recorded(Map<String, String> recorded, List<String> identity) {
    List<Check> checks = new ArrayList<>();
    for (Check check : judge(recorded, identity)) {
      if (check.verdict() == Verdict.PASS) {
        checks.add(check);
      } else if (check.path().equals("name")) {
        checks.add(
            new Check(
                Family.IDENTITY,
                check.path(),
                Verdict.NOT_REPORTED,
                check.expected(),
                "not said",
                ""));
      } else {
        checks.add(
            new Check(
                Family.IDENTITY,
                check.path(),
                Verdict.FAIL,
                check.expected(),
                check.seen(),
                "another firmware is on the board than the one on record; build and load it again"));
      }
    }
    return checks;
  }

  private static String squeezed(String text) {
    return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
