package dev.gantrywright.header;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Runs the directives of files in the order in which a compiler would meet them (C17 6.10.1,
 * 6.10.2). A condition that depends on an unknown name opens all its branches.
 */
final class Evaluation {
  /** C17 5.2.4.1 asks for 15 levels; compilers stop at 200. */
  private static final int MOST_INCLUDES_DEEP = 200;

  private static final long MOST_ROWS = 10_000_000;

  /** Bytes of a condition that are looked at in about the time of one plain directive. */
  private static final int BYTES_A_ROW = 4;

  private static final int MOST_PROBLEMS = 1_000;
  private static final int DEFINED = "defined".hashCode();

  private final MacroTable macros;
  private final Map<String, Deque<Meaning>> pushed = new HashMap<>();
  private final Alternatives alternatives = new Alternatives();
  private final Set<SourceFile> once = new HashSet<>();
  private final List<Problem> problems = new ArrayList<>();
  private final IncludeResolver includes;
  private final Visits visits;
  private final boolean tellMissing;
  private final Conditions conditions;
  private long rows;
  private int depth;
  private boolean exhausted;
  private boolean toldSpent;

  /**
   * Prepares an evaluation.
   *
   * @param unknowns how a name without a definition is taken
   * @param visits told what was seen, or null
   * @param tellMissing whether a header that cannot be found is a problem
   */
  Evaluation(
      Language language,
      IncludeResolver includes,
      Unknowns unknowns,
      Visits visits,
      boolean tellMissing) {
    this(language, includes, unknowns, visits, tellMissing, 0);
  }

  /**
   * The same for a folder whose size is known.
   *
   * @param names how many macros are to be expected
   */
  Evaluation(
      Language language,
      IncludeResolver includes,
      Unknowns unknowns,
      Visits visits,
      boolean tellMissing,
      int names) {
    this.macros = new MacroTable(names);
    this.includes = includes;
    this.visits = visits;
    this.tellMissing = tellMissing;
    this.conditions = new Conditions(macros, language, includes, unknowns, visits != null);
  }

  MacroTable macros() {
    return macros;
  }

  List<Problem> problems() {
    return problems;
  }

  /** The names on which what was seen depends. */
  Set<String> asked() {
    return conditions.asked();
  }

  /** Runs one file as if it were included here. */
  void include(SourceFile file, SourceFile includer, int row) {
    if (once.contains(file)) {
      return;
    }
    // A file that is run for itself costs no more than its bytes.
    if (depth > 0 && (exhausted || depth >= MOST_INCLUDES_DEEP || rows > MOST_ROWS)) {
      if (!exhausted) {
        String what =
            depth >= MOST_INCLUDES_DEEP
                ? "inclusions are more than " + MOST_INCLUDES_DEEP + " deep"
                : "inclusions repeat each other beyond " + MOST_ROWS + " directives";
        problem(includer, row, what + "; break the circle (no more is included)");
      }
      exhausted = true;
      return;
    }
    conditions.includeLevel(depth++);
    if (visits != null) {
      visits.enter(file, includer, row, alternatives.open());
    }
    run(file);
    depth--;
    conditions.includeLevel(depth - 1);
  }

  private void run(SourceFile file) {
    DirectiveTable table = file.table();
    Visits.Record record = visits == null ? null : visits.of(file);
    Deque<Branches> stack = new ArrayDeque<>();
    int i = 0;
    while (i < table.size()) {
      DirectiveKind kind = table.kind(i);
      if (record != null) {
        visits.see(record, i, alternatives.open());
      }
      rows += kind == DirectiveKind.DEFINE ? 1 : 1 + length(table, i) / BYTES_A_ROW;
      switch (kind) {
        case DEFINE -> {
          define(file, i);
          i++;
        }
        case IF, IFDEF, IFNDEF -> {
          Branches branches = new Branches(stack.peek());
          stack.push(branches);
          i = enter(file, i, branches, decide(file, i, record));
        }
        case ELIF, ELIFDEF, ELIFNDEF, ELSE -> i = nextBranch(file, i, stack, record);
        case ENDIF -> {
          if (!stack.isEmpty()) {
            close(stack.pop(), file, i);
          }
          i++;
        }
        default -> {
          other(file, i, kind, stack);
          i++;
        }
      }
    }
    while (!stack.isEmpty()) {
      close(stack.pop(), file, table.size() - 1);
    }
  }

  private static int length(DirectiveTable table, int row) {
    return table.end(row) - table.start(row);
  }

  private void other(SourceFile file, int row, DirectiveKind kind, Deque<Branches> stack) {
    switch (kind) {
      case UNDEF -> {
        if (file.table().nameEnd(row) > file.table().nameStart(row)) {
          alternatives.set(macros.symbol(file, row), Meaning.UNDEFINED);
        } else {
          problem(file, row, "this #undef has no name");
        }
      }
      case INCLUDE, INCLUDE_NEXT, IMPORT -> includeDirective(file, row, kind);
      case PRAGMA -> pragma(file, row);
      case ERROR -> error(file, row, stack);
      default -> {}
    }
  }

  private void define(SourceFile file, int row) {
    DirectiveTable table = file.table();
    if (table.nameEnd(row) == table.nameStart(row)) {
      problem(file, row, "this #define has no name");
    } else if (couldBeWrong(file, row) && file.tokens().macro(row) == null) {
      problem(file, row, "the parameters or operators of this macro are not C; it is passed over");
    } else if (table.hash(row) == DEFINED && file.name(row).equals("defined")) {
      problem(file, row, "\"defined\" cannot be a macro; it is passed over");
    } else if (alternatives.open()) {
      alternatives.set(macros.symbol(file, row), new Meaning.Defined(file, row));
    } else {
      macros.define(file, row);
    }
  }

  private static boolean couldBeWrong(SourceFile file, int row) {
    DirectiveTable table = file.table();
    return table.has(row, DirectiveTable.FUNCTION_LIKE)
        || MacroBody.mayPasteAtAnEnd(
            file.bytes(), table.nameEnd(row), table.end(row), table.has(row, DirectiveTable.PLAIN));
  }

  private Truth decide(SourceFile file, int row, Visits.Record record) {
    Conditions.Result result = conditions.decide(file, row);
    if (result.error() != null) {
      problem(file, row, result.error());
    }
    if (record != null) {
      visits.decide(record, row, result.truth(), result.evidence());
    }
    return result.truth();
  }

  private int enter(SourceFile file, int row, Branches branches, Truth truth) {
    if (truth == Truth.FALSE) {
      return file.table().link(row);
    }
    branches.decided |= truth == Truth.TRUE;
    branches.open |= truth == Truth.UNKNOWN;
    if (branches.open) {
      branches.mark = alternatives.begin();
    }
    return row + 1;
  }

  private int nextBranch(SourceFile file, int row, Deque<Branches> stack, Visits.Record record) {
    if (stack.isEmpty()) {
      return row + 1;
    }
    Branches branches = stack.peek();
    finish(branches);
    if (branches.decided) {
      return file.table().link(row);
    }
    Truth truth = Truth.TRUE;
    if (file.table().kind(row) != DirectiveKind.ELSE) {
      truth = decide(file, row, record);
    } else if (record != null) {
      visits.decide(record, row, branches.open ? Truth.UNKNOWN : truth, Evidence.NONE);
    }
    return enter(file, row, branches, truth);
  }

  private void finish(Branches branches) {
    if (branches.mark >= 0) {
      Map<MacroTable.Symbol, Meaning> after = alternatives.end(branches.mark);
      branches.mark = -1;
      if (branches.failed) {
        branches.failed = false;
      } else {
        branches.outcomes.add(after);
      }
    }
  }

  private void close(Branches branches, SourceFile file, int row) {
    finish(branches);
    if (!branches.open) {
      return;
    }
    if (!branches.decided) {
      branches.outcomes.add(Map.of());
    }
    if (!branches.outcomes.isEmpty()) {
      alternatives.join(branches.outcomes);
    }
    if (alternatives.spent() && !toldSpent) {
      toldSpent = true;
      String what = "open conditions stand in each other too often; what they define from here on";
      problem(file, row, what + " counts as open");
    }
  }

  /** A branch that stops the compiler is not one of the ways a build can go. */
  private void error(SourceFile file, int row, Deque<Branches> stack) {
    Branches nearest = Branches.open(stack.peek());
    if (nearest != null) {
      nearest.failed = true;
      return;
    }
    if (!alternatives.open()) {
      DirectiveTable table = file.table();
      String text = file.excerpt(table.nameStart(row), table.end(row));
      problem(file, row, "#error " + text.strip());
    }
  }

  private void includeDirective(SourceFile file, int row, DirectiveKind kind) {
    String header = HeaderName.of(file, row, conditions);
    if (header == null) {
      problem(file, row, "this names no header");
      return;
    }
    boolean angled = header.charAt(0) == '<';
    String name = header.substring(1, header.length() - 1);
    SourceFile found = includes.find(name, angled, file, kind == DirectiveKind.INCLUDE_NEXT);
    if (found != null) {
      include(found, file, row);
      if (kind == DirectiveKind.IMPORT) {
        once.add(found);
      }
    } else if (tellMissing) {
      problem(file, row, "the header " + header + " was not found; its macros are missing");
    }
  }

  private void pragma(SourceFile file, int row) {
    List<Token> words = file.tokens().behind(row);
    if (words.isEmpty()) {
      return;
    }
    String first = words.get(0).text();
    if (first.equals("once")) {
      if (!alternatives.open()) {
        once.add(file);
      }
    } else if (first.equals("push_macro") || first.equals("pop_macro")) {
      pushOrPop(first.equals("push_macro"), words);
    } else if (first.equals("GCC") && words.size() > 2 && words.get(1).text().equals("poison")) {
      for (Token name : words.subList(2, words.size())) {
        alternatives.set(macros.symbol(name.text()), Meaning.UNDEFINED);
      }
    }
  }

  private void pushOrPop(boolean push, List<Token> words) {
    if (words.size() < 3 || words.get(2).kind() != TokenKind.STRING) {
      return;
    }
    String literal = words.get(2).text();
    String name = literal.substring(1, literal.length() - 1);
    MacroTable.Symbol symbol = macros.symbol(name);
    Deque<Meaning> stack = pushed.computeIfAbsent(name, k -> new ArrayDeque<>());
    if (push) {
      stack.push(symbol.meaning());
    } else if (!stack.isEmpty()) {
      alternatives.set(symbol, stack.pop());
    }
  }

  private void problem(SourceFile file, int row, String text) {
    if (problems.size() < MOST_PROBLEMS && file != null) {
      int line = row < file.table().size() && row >= 0 ? file.lineOf(file.table().start(row)) : 0;
      problems.add(new Problem(file.path(), line, 0, text));
    }
  }

  /** The state of one {@code #if … #endif} while it is run. */
  private static final class Branches {
    private final Branches around;
    private boolean decided;
    private boolean open;
    private boolean failed;
    private int mark = -1;
    private final List<Map<MacroTable.Symbol, Meaning>> outcomes = new ArrayList<>();

    /**
     * @param outer the one that it stands in, or null; as long as it does, that one's branch stays
     */
    Branches(Branches outer) {
      around = open(outer);
    }

    /** This one if its branch is open, or the nearest around it whose is, or null. */
    static Branches open(Branches innermost) {
      return innermost == null || innermost.mark >= 0 ? innermost : innermost.around;
    }
  }
}
