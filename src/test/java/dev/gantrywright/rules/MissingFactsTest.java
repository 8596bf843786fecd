package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.book.StandardBook;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rule is silent about what it is not told, and never trips over it. */
class MissingFactsTest {
  private static final RuleBook BOOK = StandardBook.open();

  /** What may be said where a fact is missing: that it is. */
  private static final String MISSED =
      ".*-(not-stated|unstated|not-open|incomplete|not-mapped|without-axis)|axis-absent";

  @ParameterizedTest
  @ValueSource(strings = {"sandpiper", "guillemot"})
  void oneFactLessBringsNoOtherFindingThanThatItIsMissing(String name) throws Exception {
    CheckInput clean = Workshop.printer(name);
    Set<String> said = new TreeSet<>();
    BOOK.check(clean).forEach(finding -> said.add(finding.key()));
    for (String path : ProfileValues.paths(clean.profile())) {
      // Without a constant the folder stands for another board; no ratio is a ratio of 1.
      if (path.equals("board.constant") || path.endsWith(".drive.ratio")) {
        continue;
      }
      CheckInput less;
      try {
        less = clean.with(ProfileValues.with(clean.profile(), path, null));
      } catch (ProfileProblem needed) {
        continue;
      }
      assertThat(BOOK.check(less))
          .as("without " + path)
          .filteredOn(finding -> !said.contains(finding.key()))
          .allSatisfy(finding -> assertThat(finding.slug()).matches(MISSED));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sandpiper", "guillemot"})
  void onePartLessTripsNoRule(String name) {
    for (String part :
        new String[] {
          "{\"axes\":{\"x\":null}}",
          "{\"axes\":null}",
          "{\"axes\":{\"z\":{\"drive\":null,\"motor\":null,\"driver\":null,\"homing\":null}}}",
          "{\"heaters\":{\"bed\":null}}",
          "{\"heaters\":null,\"endstops\":null}",
          "{\"printing\":null,\"supply\":null}",
          "{\"board\":null,\"serial\":null,\"build\":null,\"link\":null}",
          "{\"$sheet\":null}",
          "{\"$sheet\":{\"ports\":null,\"inputs\":null,\"sockets\":null,\"outputs\":null,"
              + "\"sensors\":null,\"supply\":null,\"loader\":null}}"
        }) {
      assertThat(BOOK.check(Workshop.printer(name, part)))
          .as(part)
          .noneMatch(finding -> finding.family() == Family.INTERNAL);
    }
  }

  @Test
  void nothingOpenedBesideTheProfileTripsNoRule() {
    for (String name : Workshop.CLEAN) {
      CheckInput alone =
          new CheckInput(Workshop.printer(name).profile(), null, null, null, Workshop.CATALOG);
      assertThat(BOOK.check(alone))
          .noneMatch(finding -> finding.family() == Family.INTERNAL)
          .noneMatch(finding -> finding.family() == Family.FOLDER)
          .noneMatch(finding -> finding.level() == Level.ERROR);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"sandpiper", "guillemot", "heron"})
  void aFolderWithoutAMapAndAMapWithoutAFolderTripNoRule(String name) {
    CheckInput whole = Workshop.printer(name);
    CheckInput noMap =
        new CheckInput(whole.profile(), whole.sheet(), whole.folder(), null, whole.catalog());
    CheckInput noFolder =
        new CheckInput(whole.profile(), whole.sheet(), null, whole.names(), whole.catalog());
    assertThat(BOOK.check(noMap)).noneMatch(finding -> finding.family() == Family.INTERNAL);
    assertThat(BOOK.check(noFolder)).noneMatch(finding -> finding.family() == Family.INTERNAL);
  }
}
