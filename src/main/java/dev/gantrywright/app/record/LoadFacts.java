package dev.gantrywright.app.record;

import dev.gantrywright.app.LoadJob;
import dev.gantrywright.load.CopyReport;
import tools.jackson.databind.node.ObjectNode;

/** What was loaded, and how. */
final class LoadFacts {
  private LoadFacts() {}

  /** A copy to a card or drive that was read back and compared. */
  static ObjectNode copied(LoadJob.Request request, LoadJob.Done done) {
    CopyReport report = done.report();
    ObjectNode facts = asked(request, report.sha256());
    facts.put("way", "card");
    facts.put("to", request.card().shown());
    facts.put("name", report.name());
    facts.put("bytes", report.bytes());
    facts.put("readBack", true);
    facts.put("fromCard", report.fromCard());
    facts.put("alreadyThere", report.alreadyThere());
    facts.put("next", done.pending().next());
    return facts;
  }

  /** A command of the user's own that ended well; what it left was not read back. */
  static ObjectNode commanded(LoadJob.Request request, String sha256, String command) {
    ObjectNode facts = asked(request, sha256);
    facts.put("way", "command");
    facts.put("to", command);
    facts.put("bytes", request.image().length);
    facts.put("readBack", false);
    return facts;
  }

  /** A drive that takes the file while it is written and shows nothing of it after. */
  static ObjectNode taken(LoadJob.Request request, String sha256, String drive) {
    ObjectNode facts = asked(request, sha256);
    facts.put("way", "drive");
    facts.put("to", drive);
    facts.put("bytes", request.image().length);
    facts.put("readBack", false);
    return facts;
  }

  private static ObjectNode asked(LoadJob.Request request, String sha256) {
    ObjectNode facts = Facts.object();
    facts.put("file", request.file().toString());
    facts.put("sha256", sha256);
    Facts.put(facts, "because", request.reason());
    return facts;
  }
}
