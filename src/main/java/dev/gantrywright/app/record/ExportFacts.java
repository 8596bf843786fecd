package dev.gantrywright.app.record;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.patch.Manifest;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.PlannedLine;
import dev.gantrywright.patch.Refusal;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What an export did. */
final class ExportFacts {
  private ExportFacts() {}

  static ObjectNode of(OpenPrinter printer, PatchPlan plan, Manifest manifest, Path patched) {
    ObjectNode facts = Facts.object();
    FirmwareRelease release = FirmwareRelease.of(plan.folder());
    ObjectNode firmware = facts.putObject("firmware");
    firmware.put("release", release.name());
    firmware.put("sha256", release.sha256());
    firmware.put("files", release.files());
    facts.put("patched", patched.toString());
    if (printer.names() != null) {
      Map<String, String> identity = FirmwareIdentity.of(plan.patched(), printer.names());
      if (!identity.isEmpty()) {
        ObjectNode said = facts.putObject("identity");
        identity.forEach(said::put);
      }
    }
    Facts.put(facts, "board", Optional.ofNullable(printer.sheet()).map(sheet -> sheet.name()));
    ArrayNode files = facts.putArray("changed");
    for (Manifest.ChangedFile file : manifest.files()) {
      ObjectNode row = files.addObject();
      row.put("path", file.path());
      row.put("before", file.sha256Before());
      row.put("after", file.sha256After());
    }
    ArrayNode lines = facts.putArray("lines");
    plan.lines().forEach(line -> line(lines.addObject(), line));
    ArrayNode refusals = facts.putArray("refused");
    plan.refusals().forEach(refusal -> refusal(refusals.addObject(), refusal));
    facts.put("unchanged", plan.unchanged().size());
    Facts.texts(facts, "leftOut", manifest.leftOut());
    return facts;
  }

  private static void line(ObjectNode row, PlannedLine line) {
    row.put("file", line.file());
    row.put("line", line.line());
    row.put("before", line.before());
    row.put("after", line.after());
    row.put("macro", line.macro());
    row.put("path", line.path());
    row.put("value", line.value());
    row.put("note", line.note());
  }

  private static void refusal(ObjectNode row, Refusal refusal) {
    row.put("path", refusal.path());
    row.put("macro", refusal.macro());
    row.put("value", refusal.value());
    row.put("reason", refusal.reason());
  }
}
