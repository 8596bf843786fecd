package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;

/** Finds the chain of conditions above a setting, for {@link Why}. */
final class Reasons {
  private static final int LONGEST_CONDITION = 120;
  private static final int MOST_INCLUDERS = 20;

  /** Conditions of one file in an account, which is asked for by itself. */
  static final int MOST_NESTED = 60;

  /** Conditions of one file in the one line that each setting carries. */
  static final int MOST_IN_LINE = 12;

  private static final int LONGEST_VALUE = 40;
  private static final int MOST_BRANCHES = 1_000;

  /** Bytes of a directive that are looked at for its text. */
  private static final int MOST_READ = 1_000;

  private static final Pattern BLANKS = Pattern.compile("\\\\?\\s+");

  private Reasons() {}

  /** A condition of a chain and its words. */
  record Told(int row, Why.Condition condition, String words) {
    static Told of(int row, Why.Condition condition) {
      return new Told(row, condition, condition.words());
    }
  }

  /**
   * The conditions above a row, outermost first.
   *
   * @param most how many of each file are told, the nearest
   */
  static List<Told> chain(SourceFile file, int row, Visits visits, int most) {
    Visits.Record record = visits.of(file);
    if (!record.entered()) {
      String because = "no #include of it is taken";
      Why.Outcome never = Why.Outcome.SKIPPED;
      return List.of(
          Told.of(-1, new Why.Condition(file.path(), 1, "the whole file", never, because)));
    }
    List<Told> chain = new ArrayList<>();
    SourceFile at = file;
    int place = row;
    Visits.Record seen = record;
    for (int i = 0; i < MOST_INCLUDERS && at != null; i++) {
      List<Told> here = chainOf(at, place, seen, most);
      chain.addAll(0, here);
      place = seen.includeRow();
      at = seen.includer();
      seen = at == null ? null : visits.of(at);
    }
    return chain;
  }

  /** The chain as one line. */
  static String words(List<Told> chain) {
    List<String> clauses = new ArrayList<>();
    for (Told told : chain) {
      clauses.add(told.words());
    }
    return String.join("; ", clauses);
  }

  private static List<Told> chainOf(SourceFile file, int row, Visits.Record record, int most) {
    List<Told> out = new ArrayList<>();
    int[] parents = file.layout().parents();
    int guard = IncludeGuard.row(file);
    for (int branch = parents[row]; branch >= 0; branch = parents[branch]) {
      if (out.size() == most) {
        int line = file.lineOf(file.table().start(branch));
        Why.Outcome outcome = outcome(record.outcome(branch));
        String further = "not listed further out";
        out.add(Told.of(-1, new Why.Condition(file.path(), line, "…", outcome, further)));
        break;
      }
      if (branch != guard || record.outcome(branch) != Truth.TRUE) {
        out.add(condition(file, branch, record));
      }
    }
    Collections.reverse(out);
    return out;
  }

  private static Told condition(SourceFile file, int branch, Visits.Record record) {
    Told known = record.told(branch);
    if (known != null) {
      return known;
    }
    Why.Outcome outcome = outcome(record.outcome(branch));
    String because =
        outcome == Why.Outcome.SKIPPED
            ? taken(file, branch, record)
            : because(record.evidence(branch));
    int line = file.lineOf(file.table().start(branch));
    String text = text(file, branch);
    return record.keep(
        Told.of(branch, new Why.Condition(file.path(), line, text, outcome, because)));
  }

  /** The branch before this one that was taken in its stead, or empty. */
  private static String taken(SourceFile file, int branch, Visits.Record record) {
    int[] before = file.layout().branchesBefore();
    int earlier = before[branch];
    for (int i = 0; earlier >= 0 && record.outcome(earlier) != Truth.TRUE; i++) {
      earlier = i < MOST_BRANCHES ? before[earlier] : -1;
    }
    return earlier < 0 ? "" : condition(file, earlier, record).words();
  }

  private static String text(SourceFile file, int branch) {
    DirectiveTable table = file.table();
    int from = table.start(branch);
    String text = file.text(from, Math.min(table.end(branch), from + MOST_READ));
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

  private static String shown(List<Token> tokens) {
    List<Token> first = tokens.subList(0, Math.min(tokens.size(), LONGEST_VALUE + 1));
    String text = Token.spell(first);
    return text.length() > LONGEST_VALUE ? text.substring(0, LONGEST_VALUE) + "…" : text;
  }

  private static String meaning(Meaning meaning) {
    if (meaning instanceof Meaning.Defined d) {
      MacroBody body = d.body();
      String text = body == null ? "" : shown(body.tokens());
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
