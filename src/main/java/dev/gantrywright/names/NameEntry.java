package dev.gantrywright.names;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Where one profile field stands in a firmware folder, and how it is spelled there.
 *
 * @param macro the macro or build-settings key; null where this firmware has none
 * @param element index within a brace list or a packed text, braces flattened; null for the whole
 *     value
 * @param file relative to the folder, with {@code /}
 * @param line counted from 1
 * @param confidence 0 to 1: the share of such answers that are right
 * @param sure false where the user should look before it is written
 * @param meaning what the macro's value says, see {@link Meaning}; null where it says the field's
 *     own value
 * @param evidence why, in words
 * @param others the runners-up, best first
 * @param values the field's value to the text that stands in the folder; empty where the usual
 *     spelling serves
 * @param switches the field's value to the bare {@code #define} that is switched on for it, all
 *     others being switched off; empty where one macro carries the value
 * @param unit the unit that the folder uses where it is not the field's own
 * @param section the section of a build-settings key
 * @param by {@code user} where the user chose it; such an entry outlives learning
 */
public record NameEntry(
    String macro,
    Integer element,
    String file,
    Integer line,
    double confidence,
    boolean sure,
    String meaning,
    List<String> evidence,
    List<OtherName> others,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) Map<String, String> values,
    @JsonInclude(JsonInclude.Include.NON_EMPTY) Map<String, String> switches,
    @JsonInclude(JsonInclude.Include.NON_NULL) String unit,
    @JsonInclude(JsonInclude.Include.NON_NULL) String section,
    @JsonInclude(JsonInclude.Include.NON_NULL) String by,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  /** The {@code by} of an entry that the user chose. */
  public static final String USER = "user";

  public NameEntry {
    evidence = Ordered.list(evidence);
    others = Ordered.list(others);
    values = Ordered.map(values);
    switches = Ordered.map(switches);
    more = Ordered.map(more);
  }

  /** The user's choice of a macro (or of one element of it) for a field. */
  public static NameEntry chosen(String macro, Integer element, String file, Integer line) {
    return plain(macro, element, file, line, 1, true, List.of("chosen by the user")).by(USER);
  }

  /** The user's word that this firmware does not carry a field. */
  public static NameEntry notInThisFirmware() {
    return plain(null, null, null, null, 1, true, List.of("the user says: not in this firmware"))
        .by(USER);
  }

  static NameEntry plain(
      String macro,
      Integer element,
      String file,
      Integer line,
      double confidence,
      boolean sure,
      List<String> evidence) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        null,
        evidence,
        null,
        null,
        null,
        null,
        null,
        null,
        null);
  }

  /** Whether the user set this entry. */
  public boolean byUser() {
    return USER.equals(by);
  }

  NameEntry by(String whose) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        meaning,
        evidence,
        others,
        values,
        switches,
        unit,
        section,
        whose,
        more);
  }

  /** The same place with another meaning and the spellings that go with it. */
  public NameEntry meaning(String newMeaning, Map<String, String> newValues) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        newMeaning,
        evidence,
        others,
        newValues,
        switches,
        unit,
        section,
        by,
        more);
  }

  NameEntry unit(String newUnit) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        meaning,
        evidence,
        others,
        values,
        switches,
        newUnit,
        section,
        by,
        more);
  }

  NameEntry switches(Map<String, String> newSwitches) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        meaning,
        evidence,
        others,
        values,
        newSwitches,
        unit,
        section,
        by,
        more);
  }

  NameEntry section(String newSection) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        meaning,
        evidence,
        others,
        values,
        switches,
        unit,
        newSection,
        by,
        more);
  }

  NameEntry others(List<OtherName> newOthers) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        meaning,
        evidence,
        newOthers,
        values,
        switches,
        unit,
        section,
        by,
        more);
  }

  NameEntry judged(double newConfidence, boolean newSure) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        newConfidence,
        newSure,
        meaning,
        evidence,
        others,
        values,
        switches,
        unit,
        section,
        by,
        more);
  }

  NameEntry evidence(List<String> newEvidence) {
    return new NameEntry(
        macro,
        element,
        file,
        line,
        confidence,
        sure,
        meaning,
        newEvidence,
        others,
        values,
        switches,
        unit,
        section,
        by,
        more);
  }

  /** The same choice at another place, as after a rename. */
  NameEntry at(String newMacro, String newFile, Integer newLine) {
    return new NameEntry(
        newMacro,
        element,
        newFile,
        newLine,
        confidence,
        sure,
        meaning,
        evidence,
        others,
        values,
        switches,
        unit,
        section,
        by,
        more);
  }
}
