package dev.gantrywright.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.book.StandardBook;
import java.util.List;
import org.junit.jupiter.api.Test;

class WaiversTest {
  private static final RuleBook BOOK = StandardBook.open();
  private static final String OPEN_CONTACT =
      "{\"endstops\": {\"xMin\": {\"contact\": \"NO\", \"inverted\": true}}}";

  private static Finding finding(CheckInput input) {
    return BOOK.check(input).stream()
        .filter(f -> f.slug().equals("contact-hides-broken-wire"))
        .findFirst()
        .orElseThrow();
  }

  private static PrinterProfile waived(PrinterProfile profile, Finding finding, Waiver waiver)
      throws Exception {
    String json =
        ("{\"waivers\":{\"%s\":{\"reason\":\"%s\",\"evidence\":\"%s\",\"date\":\"%s\"}}}")
            .formatted(finding.key(), waiver.reason(), waiver.evidence(), waiver.date());
    var tree =
        MergePatch.apply(
            ProfileValues.tree(profile),
            tools.jackson.databind.json.JsonMapper.shared().readTree(json));
    return ProfileStore.parse("waived", tree.toString().getBytes("UTF-8"));
  }

  @Test
  void aWaivedFindingStandsAsideWithItsReason() throws Exception {
    CheckInput input = Workshop.printer("guillemot", OPEN_CONTACT);
    Finding finding = finding(input);
    Waiver waiver = Waivers.waive(finding, " old wiring, kept short ", "2026-03-01");
    assertThat(waiver.reason()).isEqualTo("old wiring, kept short");
    PrinterProfile profile = waived(input.profile(), finding, waiver);
    Waivers sorted = Waivers.sort(profile, BOOK.check(input.with(profile)));
    assertThat(sorted.open()).doesNotContain(finding);
    assertThat(sorted.waived()).containsKey(finding);
    assertThat(sorted.returned()).isEmpty();
    assertThat(sorted.idle()).isEmpty();
  }

  @Test
  void aWaivedFindingReturnsWhenTheFactsChange() throws Exception {
    CheckInput input = Workshop.printer("guillemot", OPEN_CONTACT);
    PrinterProfile profile =
        waived(
            input.profile(),
            finding(input),
            Waivers.waive(finding(input), "old wiring", "2026-03-01"));
    PrinterProfile changed = ProfileValues.with(profile, "endstops.xMin.sensor", "npn");
    Waivers sorted = Waivers.sort(changed, BOOK.check(input.with(changed)));
    assertThat(sorted.waived()).isEmpty();
    assertThat(sorted.returned())
        .singleElement()
        .extracting(Finding::path)
        .isEqualTo("endstops.xMin.contact");
    assertThat(sorted.open()).containsAll(sorted.returned());
  }

  @Test
  void aWaiverThatNothingAnswersToIsIdle() throws Exception {
    CheckInput input = Workshop.printer("guillemot", OPEN_CONTACT);
    PrinterProfile profile =
        waived(
            input.profile(),
            finding(input),
            Waivers.waive(finding(input), "old wiring", "2026-03-01"));
    PrinterProfile changed = ProfileValues.with(profile, "endstops.xMin.contact", "NC");
    assertThat(Waivers.sort(changed, List.of()).idle())
        .containsExactly("GW-E005@endstops.xMin.contact");
  }

  @Test
  void aWaiverNeedsAReason() {
    Finding finding = finding(Workshop.printer("guillemot", OPEN_CONTACT));
    assertThatThrownBy(() -> Waivers.waive(finding, "  ", "2026-03-01"))
        .hasMessageContaining("reason");
  }
}
