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

  private static String squeezed(String text) {
    return text.strip().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }
}
