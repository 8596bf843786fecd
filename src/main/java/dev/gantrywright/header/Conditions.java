package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Decides the conditions of {@code #if} and its kin against the macros in force. */
final class Conditions {
  /** The outcome, what was looked at, and what is wrong with the condition or null. */
  record Result(Truth truth, Evidence evidence, String error) {}

  private static final Result YES = new Result(Truth.TRUE, Evidence.NONE, null);
  private static final Result NO = new Result(Truth.FALSE, Evidence.NONE, null);

  /** Tokens that all conditions of a run may expand to; then each is held to a few. */
  private static final int MOST_SPENT = 4_000_000;

  /** One condition may take this part of what is left, so that the others have their share. */
  private static final int SHARE = 16;

  private static final int FEW_TOKENS = 64;

  /** More names than an account of a condition gives. */
  private static final int MOST_EVIDENCE = 8;

  private final MacroTable macros;
  private final Language language;
  private final IncludeResolver includes;
  private final Unknowns unknowns;
  private long spent;
  private final boolean keepEvidence;
  private final Set<String> asked = new HashSet<>();
  private int counter;
  private int includeLevel;

  Conditions(
      MacroTable macros,
      Language language,
      IncludeResolver includes,
      Unknowns unknowns,
      boolean keepEvidence) {
    this.macros = macros;
    this.language = language;
    this.includes = includes;
    this.unknowns = unknowns;
    this.keepEvidence = keepEvidence;
  }

  /** How many inclusions the file at hand stands in; 0 for one that is run for itself. */
  void includeLevel(int level) {
    includeLevel = level;
  }

  /** The names that a condition or an inclusion asked for, where an account is kept. */
  Set<String> asked() {
    return asked;
  }

  Result decide(SourceFile file, int row) {
    return switch (file.table().kind(row)) {
      case IFDEF, ELIFDEF -> defined(file, row, false);
      case IFNDEF, ELIFNDEF -> defined(file, row, true);
      default -> expression(file, row);
    };
  }

  List<Token> expand(SourceFile file, int row, List<Token> tokens) {
    MacroExpander expander = new MacroExpander(new Names(file, row), false, allowed());
    try {
      return expander.expand(tokens);
    } catch (ExpansionLimit e) {
      return List.of();
    } finally {
      spent += expander.spent();
    }
  }

  private Result defined(SourceFile file, int row, boolean negated) {
    DirectiveTable table = file.table();
    if (table.nameEnd(row) == table.nameStart(row)) {
      return new Result(Truth.FALSE, Evidence.NONE, "this condition has no macro name");
    }
    String name = file.name(row);
    Names names = new Names(file, row);
    Truth truth = names.defined(name);
    if (negated) {
      truth = truth == Truth.UNKNOWN ? truth : Truth.of(truth == Truth.FALSE);
      if (truth == Truth.UNKNOWN && IncludeGuard.row(file) == row && names.ownAlone(name)) {
        truth = Truth.TRUE; // entered before in an open branch: here it is certain
      }
    }
    if (!keepEvidence) {
      return truth == Truth.TRUE ? YES : NO;
    }
    return new Result(truth, names.evidence(null), null);
  }

  /** How many tokens the next condition may expand to: once much is spent, few. */
  private int allowed() {
    return (int) Math.max(FEW_TOKENS, (MOST_SPENT - spent) / SHARE);
  }

  private Result expression(SourceFile file, int row) {
    Names names = new Names(file, row);
    MacroExpander expander = new MacroExpander(names, true, allowed());
    try {
      List<Token> written = file.tokens().behind(row);
      if (takesCppWords()) {
        written = AlternativeTokens.operators(written);
      }
      List<Token> tokens = expander.expand(written);
      if (takesCppWords()) {
        tokens = AlternativeTokens.operators(tokens); // those of the macros' replacements
      }
      Truth truth = ConditionParser.evaluate(tokens, names).truth();
      return new Result(truth, names.evidence(null), null);
    } catch (ConditionError | ExpansionLimit e) {
      String text = e.getMessage() + "; the condition counts as false";
      return new Result(Truth.FALSE, names.evidence(text), text);
    } finally {
      spent += expander.spent();
    }
  }

  /** A folder's headers may be read by either compiler, and most such firmware is C++. */
  private boolean takesCppWords() {
    return language == Language.CPP || unknowns.open();
  }

  /** The names as one condition sees them. */
  private final class Names implements ConditionNames, Function<String, MacroBody> {
    private final SourceFile file;
    private final int row;
    private final List<Evidence.Item> items = new ArrayList<>();

    Names(SourceFile file, int row) {
      this.file = file;
      this.row = row;
    }

    Evidence evidence(String error) {
      return keepEvidence ? new Evidence(List.copyOf(items), error) : Evidence.NONE;
    }

    private Meaning meaning(String name) {
      MacroTable.Symbol symbol = macros.find(name);
      Meaning meaning =
          symbol != null
              ? symbol.meaning()
              : unknowns.settled().test(name) ? Meaning.UNDEFINED : Meaning.EXTERNAL;
      if (keepEvidence) {
        asked.add(name);
      }
      if (keepEvidence && items.size() < MOST_EVIDENCE) {
        Evidence.Item item = new Evidence.Item(name, meaning);
        if (!items.contains(item)) {
          items.add(item);
        }
      }
      return meaning;
    }

    boolean ownAlone(String name) {
      return meaning(name) instanceof Meaning.Several several
          && several.alternatives().stream()
              .allMatch(
                  m ->
                      m instanceof Meaning.Undefined
                          || m instanceof Meaning.Defined d && d.file() == file);
    }

    @Override
    public MacroBody apply(String name) {
      return macro(name);
    }

    @Override
    public MacroBody macro(String name) {
      MacroBody builtIn = builtIn(name);
      if (builtIn != null) {
        return builtIn;
      }
      Meaning meaning = meaning(name);
      if (meaning instanceof Meaning.Defined defined) {
        return defined.body();
      }
      if (meaning instanceof Meaning.Several several) {
        return agreed(several);
      }
      return null;
    }

    private MacroBody agreed(Meaning.Several several) {
      MacroBody all = null;
      for (Meaning m : several.alternatives()) {
        MacroBody body = m instanceof Meaning.Defined d ? d.body() : null;
        if (body == null || all != null && !same(all, body)) {
          return null;
        }
        all = body;
      }
      return all;
    }

    private boolean same(MacroBody a, MacroBody b) {
      return a.functionLike() == b.functionLike()
          && (a.parameters() == null || a.parameters().equals(b.parameters()))
          && Token.spell(a.tokens()).equals(Token.spell(b.tokens()));
    }

    private MacroBody builtIn(String name) {
      if (!name.startsWith("__") || macros.find(name) != null) {
        return null;
      }
      return switch (name) {
        case "__LINE__" -> number(file.lineOf(file.table().start(row)));
        case "__COUNTER__" -> number(counter++);
        case "__INCLUDE_LEVEL__" -> number(includeLevel);
        default -> null;
      };
    }

    private MacroBody number(int value) {
      Token token = Token.of(TokenKind.NUMBER, Integer.toString(value), false);
      return MacroBody.of(List.of(token));
    }

    @Override
    public Truth defined(String name) {
      if (name.startsWith("__") && macros.find(name) == null && predefined(name)) {
        return Truth.TRUE;
      }
      Meaning meaning = meaning(name);
      if (meaning instanceof Meaning.Several several) {
        Boolean all = several.defined();
        return all == null ? Truth.UNKNOWN : Truth.of(all);
      }
      return meaning instanceof Meaning.External
          ? Truth.UNKNOWN
          : Truth.of(meaning instanceof Meaning.Defined);
    }

    /** C17 6.10.8.1, and what every current compiler answers to. */
    private boolean predefined(String name) {
      return switch (name) {
        case "__FILE__", "__LINE__", "__DATE__", "__TIME__", "__COUNTER__", "__INCLUDE_LEVEL__" ->
            true;
        default -> ConditionOperator.isQuery(name);
      };
    }

    @Override
    public CValue leftOver(String name) {
      if (name.equals("true") || name.equals("false")) {
        return CValue.of(takesCppWords() && name.equals("true"));
      }
      Meaning meaning = meaning(name);
      boolean settled = meaning instanceof Meaning.Undefined || meaning instanceof Meaning.Defined;
      return settled ? CValue.ZERO : CValue.UNKNOWN;
    }

    @Override
    public CValue call(String name, String argument) {
      if (ConditionOperator.isQuery(name)) {
        return unknowns.open() ? CValue.UNKNOWN : CompilerAnswers.answer(name, argument);
      }
      boolean settled = meaning(name) instanceof Meaning.Undefined;
      return settled || !unknowns.open() ? null : CValue.UNKNOWN;
    }

    @Override
    public Truth hasInclude(String header, boolean next) {
      int last = header.length() - 1;
      boolean angled = header.startsWith("<") && header.endsWith(">");
      if (last < 2 || !angled && !(header.startsWith("\"") && header.endsWith("\""))) {
        throw new ConditionError("__has_include wants a header name");
      }
      boolean found = includes.find(header.substring(1, last), angled, file, next) != null;
      return found || !unknowns.open() ? Truth.of(found) : Truth.UNKNOWN;
    }
  }
}
