package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Tells why a setting is live, dead or open: the chain of conditions above it. */
final class Reasons {
  private static final int LONGEST_CONDITION = 120;
  private static final int MOST_INCLUDERS = 20;

  private Reasons() {}

  /**
   * The reason for the state of a row.
   *
   * @param parents for each row the row of the branch that it stands in, or -1
   */
  static String of(
      SourceFile file,
      int row,
      Visits.Record record,
      Function<SourceFile, int[]> parents,
      Function<SourceFile, Visits.Record> records) {
    List<String> chain = new ArrayList<>();
    SourceFile at = file;
    int place = row;
    Visits.Record seen = record;
    for (int i = 0; i < MOST_INCLUDERS && at != null; i++) {
      List<String> here = chainOf(at, place, seen, parents.apply(at));
      chain.addAll(0, here);
      place = seen.includeRow();
      at = seen.includer();
      seen = at == null ? null : records.apply(at);
    }
    return String.join("; ", chain);
  }

  private static List<String> chainOf(
      SourceFile file, int row, Visits.Record record, int[] parents) {
    List<String> out = new ArrayList<>();
    int guard = IncludeGuard.row(file);
    for (int branch = parents[row]; branch >= 0; branch = parents[branch]) {
      if (branch != guard || record.outcome(branch) != Truth.TRUE) {
        out.add(0, condition(file, branch, record));
      }
    }
    return out;
  }

  private static String condition(SourceFile file, int branch, Visits.Record record) {
    DirectiveTable table = file.table();
    String text = file.text(table.start(branch), table.end(branch));
    text = text.replaceAll("\\\\?\\s+", " ").strip();
    int comment = text.indexOf("//");
    comment = comment < 0 ? text.indexOf("/*") : comment;
    text = comment > 0 ? text.substring(0, comment).strip() : text;
    if (text.length() > LONGEST_CONDITION) {
      text = text.substring(0, LONGEST_CONDITION) + "…";
    }
    StringBuilder out = new StringBuilder(text).append(" (").append(file.place(branch));
    out.append(") ").append(outcome(record.outcome(branch)));
    String because = because(record.evidence(branch));
    return because.isEmpty() ? out.toString() : out.append(": ").append(because).toString();
  }

  private static String outcome(Truth truth) {
    if (truth == null) {
      return "is not reached";
    }
    return switch (truth) {
      case TRUE -> "is true";
      case FALSE -> "is false";
      case UNKNOWN -> "is open";
    };
  }

  private static String because(Evidence evidence) {
    List<String> parts = new ArrayList<>();
    if (evidence.error() != null) {
      parts.add(evidence.error());
    }
    for (Evidence.Item item : evidence.names()) {
      if (parts.size() == 4) {
        parts.add("…");
        break;
      }
      parts.add(item.name() + " " + meaning(item.meaning()));
    }
    return String.join(", ", parts);
  }

  private static String meaning(Meaning meaning) {
    if (meaning instanceof Meaning.Defined d) {
      MacroBody body = d.body();
      String text = body == null ? "" : Token.spell(body.tokens());
      text = text.length() > 40 ? text.substring(0, 40) + "…" : text;
      return (text.isEmpty() ? "is defined" : "is " + text) + " (" + d.place() + ")";
    }
    if (meaning instanceof Meaning.Several) {
      return "depends on an open condition";
    }
    return meaning instanceof Meaning.Undefined
        ? "is not defined"
        : "is not settled by this folder";
  }
}
