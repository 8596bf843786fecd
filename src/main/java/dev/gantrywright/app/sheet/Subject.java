package dev.gantrywright.app.sheet;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.ProfileState;
import dev.gantrywright.record.Timeline;
import dev.gantrywright.report.ProfileFindings;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What a sheet is about.
 *
 * @param plan what would be written now; null where the printer has no firmware folder or no name
 *     map
 * @param values the profile as a tree
 * @param state of the profile as it stands
 */
record Subject(
    OpenPrinter printer,
    ProfileFindings findings,
    PatchPlan plan,
    Timeline past,
    ObjectNode values,
    ProfileState state) {
  static Subject of(OpenPrinter printer, ProfileFindings findings, PatchPlan plan, Timeline past) {
    return new Subject(
        printer,
        findings,
        plan,
        past,
        ProfileValues.tree(printer.profile()),
        ProfileState.of(printer.profile()));
  }

  PrinterProfile profile() {
    return printer.profile();
  }

  /** A value as text; a dash where the profile leaves it open. */
  String value(String path) {
    return ProfileValues.get(values, path).map(Subject::shown).orElse("–");
  }

  static String shown(JsonNode value) {
    if (value.isBoolean()) {
      return value.asBoolean() ? "yes" : "no";
    }
    return value.isString() ? value.asString("") : value.toString();
  }

  Optional<Event> last(EventKind kind) {
    return past.last(kind);
  }

  /** The last build that left an image that may be loaded. */
  Optional<Event> goodBuild() {
    return past.newestFirst().stream()
        .filter(event -> event.is(EventKind.BUILD) && event.facts().path("good").asBoolean(false))
        .findFirst();
  }
}
