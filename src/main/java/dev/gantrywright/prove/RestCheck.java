package dev.gantrywright.prove;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Check.Family;
import dev.gantrywright.prove.Check.Verdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Compares what endstops report while nothing, or something known, touches them. */
public final class RestCheck {
  /**
   * As {@code seen} is spelled below: the state, then name and word as reported. A history may
   * still say touched and free.
   */
  private static final Pattern REPORTED =
      Pattern.compile("(?:triggered|open|touched|free) \\((.+) \\S+\\)");

  private final PrinterProfile profile;
  private final EndstopNames names;

  public RestCheck(PrinterProfile profile, Map<String, String> told) {
    this.profile = profile;
    this.names = new EndstopNames(profile.endstops().keySet(), told);
  }

  /**
   * Judges one reply.
   *
   * @param readings what was reported
   * @param touched axis ends that the parked machine touches
   * @return a check for each fitted endstop, then one for each reported name that fits none
   */
  public List<Check> judge(List<EndstopReading> readings, Set<String> touched) {
    List<Check> checks = new ArrayList<>();
    Set<String> used = new HashSet<>();
    profile
        .endstops()
        .forEach(
            (end, endstop) -> {
              if (Boolean.TRUE.equals(endstop.fitted())) {
                checks.add(one(end, endstop, readings, touched.contains(end), used));
              }
            });
    for (EndstopReading reading : readings) {
      if (!used.contains(reading.name())) {
        checks.add(unplaced(reading));
      }
    }
    return checks;
  }

  private Check one(
      String end,
      Endstop endstop,
      List<EndstopReading> readings,
      boolean touched,
      Set<String> used) {
    String path = "endstops." + end;
    String expected = EndstopWord.of(touched);
    for (EndstopReading reading : readings) {
      Optional<EndstopNames.Match> match = names.match(reading.name());
      if (match.isEmpty() || !match.get().end().equals(end)) {
        continue;
      }
      used.add(reading.name());
      String seen =
          EndstopWord.of(reading.triggered()) + " (" + reading.name() + " " + reading.word() + ")";
      if (reading.triggered() != touched) {
        return new Check(
            Family.ENDSTOP,
            path + ".inverted",
            Verdict.FAIL,
            expected,
            seen,
            advice(end, endstop, touched));
      }
      if (!match.get().sure()) {
        return new Check(
            Family.ENDSTOP,
            path,
            Verdict.UNSURE,
            expected,
            seen,
            "is '" + reading.name() + "' really " + end + "? then note it in link.endstopNames");
      }
      return new Check(Family.ENDSTOP, path, Verdict.PASS, expected, seen, "");
    }
    return new Check(
        Family.ENDSTOP,
        path,
        Verdict.FAIL,
        expected,
        "not reported",
        "the firmware does not know an endstop there, or names it in a way that needs a line in"
            + " link.endstopNames");
  }

  /** The reported name that an endstop's check is about; empty where nothing was reported. */
  public static Optional<String> reported(Check check) {
    Matcher said = REPORTED.matcher(check.seen());
    return check.family() == Family.ENDSTOP && said.matches()
        ? Optional.of(said.group(1))
        : Optional.empty();
  }

  private Check unplaced(EndstopReading reading) {
    String end = names.match(reading.name()).map(EndstopNames.Match::end).orElse("");
    boolean known = profile.endstops().containsKey(end);
    return new Check(
        Family.ENDSTOP,
        known ? "endstops." + end : "",
        Verdict.UNSURE,
        known ? "not fitted" : "no such endstop",
        EndstopWord.of(reading.triggered()) + " (" + reading.name() + " " + reading.word() + ")",
        known
            ? "the firmware reports an endstop that the profile says is not fitted"
            : "say in link.endstopNames which axis end '" + reading.name() + "' is");
  }

  private static String advice(String end, Endstop endstop, boolean touched) {
    String inverted =
        endstop.inverted() == null ? "what it is now" : String.valueOf(endstop.inverted());
    String look =
        touched ? "if the machine really touches it" : "if nothing touches it and its plug is in";
    return look
        + ", endstops."
        + end
        + ".inverted must be the opposite of "
        + inverted
        + " (profile and firmware); then write, build, load and prove again";
  }
}
