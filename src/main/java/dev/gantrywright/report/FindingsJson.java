package dev.gantrywright.report;

import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Findings as one JSON document. */
public final class FindingsJson implements FindingsLayout {
  /** One profile with all that was found, as a value that a JSON writer takes. */
  public static Map<String, Object> profile(ProfileFindings profile) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", profile.file());
    json.put("printer", profile.printer());
    Map<String, Long> counts = new LinkedHashMap<>();
    for (Level level : Level.values()) {
      counts.put(level.word(), profile.count(level));
    }
    json.put("counts", counts);
    json.put("problems", profile.problems());
    json.put("findings", profile.open().stream().map(FindingsJson::finding).toList());
    json.put(
        "waived",
        profile.sorted().waived().entrySet().stream()
            .map(entry -> waived(entry.getKey(), entry.getValue()))
            .toList());
    json.put("idleWaivers", profile.sorted().idle());
    return json;
  }

  /** One finding, as a value that a JSON writer takes. */
  public static Map<String, Object> finding(Finding finding) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("id", finding.id());
    json.put("slug", finding.slug());
    json.put("level", finding.level().word());
    json.put("family", finding.family().word());
    json.put("path", finding.path());
    json.put("where", finding.where());
    json.put("summary", finding.summary());
    json.put("evidence", finding.evidence());
    json.put("source", finding.source());
    json.put("remedies", finding.remedies().stream().map(FindingsJson::remedy).toList());
    json.put("link", finding.link());
    return json;
  }

  private static Map<String, Object> remedy(Remedy remedy) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("title", remedy.title());
    json.put("safety", remedy.safety().word());
    json.put("edits", remedy.edits().stream().map(FindingsJson::edit).toList());
    return json;
  }

  private static Map<String, Object> edit(Remedy.Edit edit) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("path", edit.path());
    if (edit instanceof Remedy.SetField set) {
      json.put("value", set.value());
    } else if (edit instanceof Remedy.SetName set) {
      json.put("macro", set.macro());
      json.put("element", set.element());
      json.put("file", set.file());
      json.put("line", set.line());
    }
    return json;
  }

  private static Map<String, Object> waived(Finding finding, Waiver waiver) {
    Map<String, Object> json = finding(finding);
    json.put("reason", waiver.reason());
    json.put("date", waiver.date());
    return json;
  }

  @Override
  public String head() {
    return frame(List.of(), true).head() + "\n    ";
  }

  @Override
  public String empty(List<Unread> unread, boolean whole) {
    return head().stripTrailing() + tail(unread, whole);
  }

  @Override
  public String part(ProfileFindings profile) {
    return JsonText.of(profile(profile), 2);
  }

  @Override
  public String between() {
    return ",\n    ";
  }

  @Override
  public String tail(List<Unread> unread, boolean whole) {
    return frame(unread, whole).tail() + "\n";
  }

  private static JsonText.Frame frame(List<Unread> unread, boolean whole) {
    return JsonText.around(
        out -> out.writeStartObject().writeName("profiles").writeStartArray(),
        out -> {
          out.writeEndArray();
          if (!unread.isEmpty()) {
            out.writePOJOProperty("unread", unread);
          }
          if (!whole) {
            out.writeBooleanProperty("stopped", true);
          }
          out.writeEndObject();
        });
  }
}
