package dev.gantrywright.header;

import java.util.List;

/**
 * Tokens of the directives of one file, cut when first needed and kept for the next evaluation.
 * Threads may race to fill a slot: what they put there is immutable and equal, so either will do.
 */
final class TokenCache {
  private final SourceFile file;
  private volatile Object[] kept;

  TokenCache(SourceFile file) {
    this.file = file;
  }

  /**
   * What follows the keyword of a conditional, an inclusion or another directive without a name.
   */
  @SuppressWarnings("unchecked") // such a row holds nothing else
  List<Token> behind(int directive) {
    Object[] slots = slots();
    Object known = slots[directive];
    if (known == null) {
      known = lex(directive);
      slots[directive] = known;
    }
    return (List<Token>) known;
  }

  /** The macro that a definition makes, or null if its parameter list is malformed. */
  MacroBody macro(int directive) {
    Object[] slots = slots();
    Object known = slots[directive];
    if (known == null) {
      boolean function = file.table().has(directive, DirectiveTable.FUNCTION_LIKE);
      known = MacroBody.parse(lex(directive), function);
      if (known != null) {
        slots[directive] = known;
      }
    }
    return (MacroBody) known;
  }

  private List<Token> lex(int directive) {
    DirectiveTable table = file.table();
    return List.copyOf(
        TokenLexer.lex(file.bytes(), table.nameEnd(directive), table.end(directive)));
  }

  private Object[] slots() {
    Object[] known = kept;
    if (known == null) {
      known = new Object[file.table().size()];
      kept = known;
    }
    return known;
  }
}
