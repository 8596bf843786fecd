package dev.gantrywright.names;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
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
 * @param by {@code user} where the user set it; such an entry outlives learning
 * @param confirmed whether the user accepted a proposal as it was; its confidence is then still the
 *     one with which it was proposed
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
    @JsonInclude(JsonInclude.Include.NON_DEFAULT) boolean confirmed,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  /** The {@code by} of an entry that the user set. */
  public static final String USER = "user";

  public NameEntry {
    evidence = Ordered.list(evidence);
    others = Ordered.list(others);
    values = Ordered.map(values);
    switches = Ordered.map(switches);
    more = Ordered.map(more);
  }

  /** An entry in the making: the parts of another, some of them replaced. */
  private static final class Draft {
    private String macro;
    private Integer element;
    private String file;
    private Integer line;
    private double confidence;
    private boolean sure;
    private String meaning;
    private List<String> evidence;
    private List<OtherName> others;
    private Map<String, String> values;
    private Map<String, String> switches;
    private String unit;
    private String section;
    private String by;
    private boolean confirmed;
    private Map<String, JsonNode> more;

    private NameEntry entry() {
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
          by,
          confirmed,
          more);
    }
  }

  private NameEntry with(Consumer<Draft> change) {
    Draft draft = new Draft();
    draft.macro = macro;
    draft.element = element;
    draft.file = file;
    draft.line = line;
    draft.confidence = confidence;
    draft.sure = sure;
    draft.meaning = meaning;
    draft.evidence = evidence;
    draft.others = others;
    draft.values = values;
    draft.switches = switches;
    draft.unit = unit;
    draft.section = section;
    draft.by = by;
    draft.confirmed = confirmed;
    draft.more = more;
    change.accept(draft);
    return draft.entry();
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
    Draft draft = new Draft();
    draft.macro = macro;
    draft.element = element;
    draft.file = file;
    draft.line = line;
    draft.confidence = confidence;
    draft.sure = sure;
    draft.evidence = evidence;
    return draft.entry();
  }

  /** Whether the user set this entry: chose it, accepted it, or said that there is none. */
  public boolean byUser() {
    return USER.equals(by);
  }

  /** The proposal as it is, accepted by the user: sure from now on, and kept through learning. */
  public NameEntry accepted() {
    return with(
        draft -> {
          draft.sure = true;
          draft.by = USER;
          draft.confirmed = true;
        });
  }

  /** The entry as the user changed it: sure from now on, and kept through learning. */
  public NameEntry settled() {
    return with(
        draft -> {
          draft.sure = true;
          draft.by = USER;
          draft.confirmed = false;
        });
  }

  /** The same place with another meaning and the spellings that go with it. */
  public NameEntry meaning(String newMeaning, Map<String, String> newValues) {
    return with(
        draft -> {
          draft.meaning = newMeaning;
          draft.values = newValues;
        });
  }

  /** The same choice at another place; how values are spelled stays as it was. */
  public NameEntry moved(String newMacro, Integer newElement, String newFile, Integer newLine) {
    return with(
        draft -> {
          draft.macro = newMacro;
          draft.element = newElement;
          draft.file = newFile;
          draft.line = newLine;
        });
  }

  /** The same place with values in another unit; null for the field's own. */
  public NameEntry unit(String newUnit) {
    return with(draft -> draft.unit = newUnit);
  }

  NameEntry by(String whose) {
    return with(draft -> draft.by = whose);
  }

  NameEntry switches(Map<String, String> newSwitches) {
    return with(draft -> draft.switches = newSwitches);
  }

  NameEntry section(String newSection) {
    return with(draft -> draft.section = newSection);
  }

  NameEntry others(List<OtherName> newOthers) {
    return with(draft -> draft.others = newOthers);
  }

  NameEntry judged(double newConfidence, boolean newSure) {
    return with(
        draft -> {
          draft.confidence = newConfidence;
          draft.sure = newSure;
          draft.confirmed = confirmed && newSure;
        });
  }

  NameEntry evidence(List<String> newEvidence) {
    return with(draft -> draft.evidence = newEvidence);
  }

  /** The same choice at another place, as after a rename. */
  NameEntry at(String newMacro, String newFile, Integer newLine) {
    return moved(newMacro, element, newFile, newLine);
  }
}
