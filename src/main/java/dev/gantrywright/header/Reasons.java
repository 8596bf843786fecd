package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Finds the chain of conditions above a setting, for {@link Why}. */
final class Reasons {
  private static final int LONGEST_CONDITION = 120;
  private static final int MOST_INCLUDERS = 20;
  private static final int MOST_NESTED = 60;
  private static final int MOST_BRANCHES = 1_000;

  private static final Pattern BLANKS = Pattern.compile("\\\\?\\s+");

  private Reasons() {}

  /**
   * The conditions above a row, outermost first.
   *
   * @param parents for each row the row of the branch that it stands in, or -1
   */
  static List<Why.Condition> chain(
      SourceFile file,
      int row,
      Visits.Record record,
      Function<SourceFile, int[]> parents,
      Function<SourceFile, Visits.Record> records) {
    if (!record.entered()) {
      String because = "no #include of it is taken";
      return List.of(
          new Why.Condition(file.path(), 1, "the whole file", Why.Outcome.SKIPPED, because));
    }
    List<Why.Condition> chain = new ArrayList<>();
    SourceFile at = file;
    int place = row;
    Visits.Record seen = record;
    for (int i = 0; i < MOST_INCLUDERS && at != null; i++) {
      List<Why.Condition> here = chainOf(at, place, seen, parents.apply(at));
      chain.addAll(0, here);
      place = seen.includeRow();
      at = seen.includer();
      seen = at == null ? null : records.apply(at);
    }
    return chain;
  }

  /** The chain as one line. */
  static String words(List<Why.Condition> chain) {
    List<String> clauses = new ArrayList<>();
    for (Why.Condition condition : chain) {
      clauses.add(condition.words());
    }
    return String.join("; ", clauses);
  }

  private static List<Why.Condition> chainOf(
      SourceFile file, int row, Visits.Record record, int[] parents) {
    List<Why.Condition> out = new ArrayList<>();
    int guard = IncludeGuard.row(file);
    for (int branch = parents[row]; branch >= 0; branch = parents[branch]) {
      if (out.size() == MOST_NESTED) {
        int line = file.lineOf(file.table().start(branch));
        Why.Outcome outcome = outcome(record.outcome(branch));
        out.add(new Why.Condition(file.path(), line, "…", outcome, "not listed further out"));
        break;
      }
      if (branch != guard || record.outcome(branch) != Truth.TRUE) {
        out.add(condition(file, branch, record));
      }
    }
    Collections.reverse(out);
    return out;
  }

  private static Why.Condition condition(SourceFile file, int branch, Visits.Record record) {
    Why.Outcome outcome = outcome(record.outcome(branch));
    String because =
        outcome == Why.Outcome.SKIPPED
            ? taken(file, branch, record)
            : because(record.evidence(branch));
    int line = file.lineOf(file.table().start(branch));
    return new Why.Condition(file.path(), line, text(file, branch), outcome, because);
  }

  /** The branch before this one that was taken in its stead, or empty. */
  private static String taken(SourceFile file, int branch, Visits.Record record) {
    int[] before = file.branchesBefore();
    int earlier = before[branch];
    for (int i = 0; earlier >= 0 && record.outcome(earlier) != Truth.TRUE; i++) {
      earlier = i < MOST_BRANCHES ? before[earlier] : -1;
    }
    return earlier < 0 ? "" : condition(file, earlier, record).words();
  }

  private static String text(SourceFile file, int branch) {
    DirectiveTable table = file.table();
    String text = file.text(table.start(branch), table.end(branch));
    text = BLANKS.matcher(text).replaceAll(" ").strip();
    int comment = text.indexOf("//");
    comment = comment < 0 ? text.indexOf("/*") : comment;
    text = comment > 0 ? text.substring(0, comment).strip() : text;
    if (text.length() > LONGEST_CONDITION) {
      text = text.substring(0, LONGEST_CONDITION) + "…";
    }
    return text;
  }

  private static Why.Outcome outcome(Truth truth) {
    if (truth == null) {
      return Why.Outcome.SKIPPED;
    }
    return switch (truth) {
      case TRUE -> Why.Outcome.TRUE;
      case FALSE -> Why.Outcome.FALSE;
      case UNKNOWN -> Why.Outcome.OPEN;
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
