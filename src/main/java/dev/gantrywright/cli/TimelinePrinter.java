package dev.gantrywright.cli;

import dev.gantrywright.app.record.EventWords;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.HistoryFile;
import dev.gantrywright.record.Timeline;
import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;

/** A printer's timeline, as text or as one document. */
final class TimelinePrinter {
  private static final int KIND = 12;

  private final CommandSpec spec;
  private final boolean json;

  TimelinePrinter(CommandSpec spec, boolean json) {
    this.spec = spec;
    this.json = json;
  }

  void print(HistoryFile file, Timeline timeline) {
    if (json) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("file", file.file().toString());
      document.put("events", timeline.events().stream().map(TimelinePrinter::event).toList());
      document.put("unread", timeline.unread());
      document.put("setAside", timeline.setAside());
      Printed.json(spec, document);
      return;
    }
    timeline.unread().forEach(line -> Printed.err(spec).println(file.file() + ": " + line.shown()));
    if (timeline.setAside() > 0) {
      Printed.err(spec)
          .println(
              file.torn() + ": lines that a crash cut off, set aside here: " + timeline.setAside());
    }
    PrintWriter out = Printed.out(spec);
    if (timeline.events().isEmpty()) {
      out.println("nothing was kept of this printer yet; " + file.file() + " is where it goes");
    }
    String state = "";
    for (Event event : timeline.events()) {
      out.println(line(event, !state.isEmpty() && !state.equals(event.state())));
      state = event.state();
    }
  }

  /** A star stands where the profile is another than at the event before. */
  private static String line(Event event, boolean changed) {
    return String.format("%4d  %s  ", event.number(), event.id())
        + event.time().toString().replaceAll("(:\\d\\d)(\\.\\d+)?Z$", "$1Z")
        + (changed ? " * " : "   ")
        + event.kind()
        + " ".repeat(Math.max(1, KIND - event.kind().length()))
        + EventWords.of(event)
        + (event.by().isEmpty() ? "" : "  (" + event.by() + ")");
  }

  private static Map<String, Object> event(Event event) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("number", event.number());
    row.put("id", event.id());
    row.put("time", event.time().toString());
    row.put("kind", event.kind());
    row.put("by", event.by());
    row.put("state", event.state());
    row.put("summary", EventWords.of(event));
    row.put("facts", event.facts());
    return row;
  }
}
