package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes definitions as C compilers list them ({@code -E -dM}): one blank behind the name, one
 * blank where white space stood between tokens, none before the operand of {@code #}, one before
 * {@code ##}.
 */
final class MacroPrinter {
  private static final byte[] DEFINE = "#define ".getBytes(StandardCharsets.ISO_8859_1);

  private final ByteSink out;

  MacroPrinter(ByteSink out) {
    this.out = out;
  }

  void print(MacroTable.Symbol symbol) {
    SourceFile file = symbol.file();
    int row = symbol.directive();
    DirectiveTable table = file.table();
    out.add(DEFINE, 0, DEFINE.length);
    if (table.has(row, DirectiveTable.UNUSUAL_NAME)) {
      unusualName(symbol.name());
    } else {
      out.add(symbol.text, symbol.from, symbol.from + symbol.length);
    }
    boolean function = table.has(row, DirectiveTable.FUNCTION_LIKE);
    int from = table.nameEnd(row);
    int to = table.end(row);
    byte[] bytes = file.bytes();
    if (function || !out.addWords(bytes, from, to)) {
      List<Token> tokens = TokenLexer.lexAsSpelled(bytes, from, to);
      MacroBody body = MacroBody.parse(tokens, function);
      replacement(body == null ? MacroBody.of(List.of()) : body);
    }
    out.add('\n');
  }

  /** A character outside ASCII is listed as a universal character name. */
  private void unusualName(String name) {
    byte[] latin1 = name.getBytes(StandardCharsets.ISO_8859_1);
    new String(latin1, StandardCharsets.UTF_8)
        .codePoints()
        .forEach(
            point ->
                out.latin1(
                    point < 0x80 ? Character.toString(point) : String.format("\\U%08x", point)));
  }

  private void parameters(MacroBody body) {
    out.add('(');
    int last = body.parameters().size() - 1;
    for (int i = 0; i <= last; i++) {
      boolean rest = body.variadic() && i == last;
      String name = body.parameters().get(i);
      out.latin1(i > 0 ? "," : "");
      out.latin1(rest && name.equals("__VA_ARGS__") ? "" : name);
      out.latin1(rest ? "..." : "");
    }
    out.add(')');
  }

  private void replacement(MacroBody body) {
    if (body.functionLike()) {
      parameters(body);
    }
    out.add(' ');
    List<Token> tokens = body.tokens();
    boolean afterHash = false;
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      boolean paste = token.is("##") || token.is("%:%:");
      boolean operand = afterHash && body.indexOf(token) >= 0;
      if (i > 0 && (paste || token.blankBefore() && !operand)) {
        out.add(' ');
      }
      boolean hash = body.functionLike() && (token.is("#") || token.is("%:"));
      boolean stringizes = hash && i + 1 < tokens.size() && body.indexOf(tokens.get(i + 1)) >= 0;
      out.latin1(paste ? "##" : stringizes ? "#" : token.text());
      afterHash = stringizes;
    }
  }
}
