package dev.gantrywright.app.record;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.Remark;
import dev.gantrywright.image.Verdict;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** How a build ended and what image it left. */
final class BuildFacts {
  private BuildFacts() {}

  static ObjectNode of(BuildJob.Done done, String command) {
    ObjectNode facts = Facts.object();
    facts.put("outcome", done.build().outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    facts.put("command", command);
    facts.put("millis", done.build().took().toMillis());
    facts.put("attempts", done.build().attempts());
    facts.put("errors", done.build().errors());
    facts.put("warnings", done.build().warnings());
    Facts.put(facts, "problem", done.build().problem().or(done::imageProblem));
    Facts.put(facts, "file", done.build().artefact().map(file -> file.getFileName().toString()));
    done.image().ifPresent(image -> image(facts.putObject("image"), image, done));
    facts.put("good", done.good());
    return facts;
  }

  private static void image(ObjectNode facts, Image read, BuildJob.Done done) {
    Image placed = done.verdict().map(v -> v.examination().image()).orElse(read);
    facts.put("format", placed.format().words());
    facts.put("sha256", placed.sha256());
    facts.put("fileBytes", placed.fileBytes());
    if (placed.placed()) {
      facts.put("start", placed.contents().span().start());
    }
    facts.put("flashBytes", placed.contents().byteCount());
    done.need()
        .map(need -> need.ramBytes())
        .filter(bytes -> bytes > 0)
        .ifPresent(bytes -> facts.put("ramBytes", bytes));
    Optional<Verdict> verdict = done.verdict();
    if (verdict.isPresent()) {
      facts.put("mcu", verdict.get().examination().chip().part());
      ArrayNode remarks = facts.putArray("remarks");
      verdict.get().remarks().forEach(remark -> remark(remarks.addObject(), remark));
    }
  }

  private static void remark(ObjectNode row, Remark remark) {
    row.put("id", remark.id());
    row.put("level", remark.level().word());
    row.put("text", remark.text());
    row.put("evidence", remark.evidence());
  }
}
