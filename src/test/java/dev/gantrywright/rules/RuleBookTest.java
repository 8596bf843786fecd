package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.machine.ProfileValues;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RuleBookTest {
  @Rule(
      id = "GW-S901",
      slug = "always-found",
      level = Level.NOTE,
      family = Family.SERIAL,
      summary = "Found everywhere",
      reads = "serial.*",
      source = "this test")
  static final class AlwaysFound implements Check {
    final List<String> runs = new ArrayList<>();

    @Override
    public void check(Context context, Sink sink) {
      runs.add(context.profile().name());
      sink.report("serial.baud", "found " + context.profile().serial().baud());
    }
  }

  @Rule(
      id = "GW-S902",
      slug = "never-finishes",
      level = Level.ERROR,
      family = Family.SERIAL,
      summary = "Never finishes",
      reads = "**",
      source = "this test")
  static final class NeverFinishes implements Check {
    @Override
    public void check(Context context, Sink sink) {
      sink.report("serial.baud", "half a finding");
      throw new IllegalStateException("broken");
    }
  }

  static final class Nameless implements Check {
    @Override
    public void check(Context context, Sink sink) {}
  }

  @Test
  void aRuleThatThrowsIsOneFindingAndTheOthersGoOn() {
    RuleBook book = RuleBook.of(List.of(new NeverFinishes(), new AlwaysFound()));
    List<Finding> found = book.check(Workshop.printer("sandpiper"));
    assertThat(found).extracting(Finding::id).containsExactly("GW-X000", "GW-S901");
    assertThat(found.get(0).level()).isEqualTo(Level.WARNING);
    assertThat(found.get(0).family()).isEqualTo(Family.INTERNAL);
    assertThat(found.get(0).path()).isEqualTo("GW-S902");
    assertThat(found.get(0).evidence())
        .contains("never-finishes", "IllegalStateException", "RuleBookTest.java:");
  }

  @Test
  void aClassWithoutItsAnnotationIsRefused() {
    assertThatThrownBy(() -> RuleBook.of(List.of(new Nameless())))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Nameless");
  }

  @Test
  void anEditRunsOnlyTheRulesThatReadIt() throws Exception {
    AlwaysFound rule = new AlwaysFound();
    RuleBook book = RuleBook.of(List.of(rule));
    CheckInput input = Workshop.printer("sandpiper");
    Checked first = book.run(input);
    CheckInput renamed = input.with(ProfileValues.with(input.profile(), "name", "Dunlin"));
    Checked second = book.rerun(first, renamed, Set.of("name"));
    assertThat(rule.runs).containsExactly("Sandpiper");
    assertThat(second.findings()).isEqualTo(first.findings());
    assertThat(second.input()).isSameAs(renamed);
    CheckInput faster = renamed.with(ProfileValues.with(renamed.profile(), "serial.baud", 500000));
    Checked third = book.rerun(second, faster, Set.of("serial.baud"));
    assertThat(rule.runs).containsExactly("Sandpiper", "Dunlin");
    assertThat(third.findings()).extracting(Finding::evidence).containsExactly("found 500000");
  }

  @Test
  void anotherNameMapOrSheetRunsEveryRule() {
    AlwaysFound rule = new AlwaysFound();
    RuleBook book = RuleBook.of(List.of(rule));
    CheckInput input = Workshop.printer("sandpiper");
    Checked first = book.run(input);
    book.rerun(first, input.with(input.names().without("serial.baud")), Set.of());
    book.rerun(
        first,
        new CheckInput(input.profile(), null, input.folder(), input.names(), input.catalog()),
        Set.of());
    assertThat(rule.runs).hasSize(3);
  }

  @Test
  void findingsComeWorstFirst() {
    List<Finding> found =
        dev.gantrywright.rules.book.StandardBook.open().check(Workshop.printer("heron"));
    assertThat(found).isSortedAccordingTo(Finding.WORST_FIRST);
    assertThat(found.get(0).level()).isEqualTo(Level.ERROR);
  }
}
