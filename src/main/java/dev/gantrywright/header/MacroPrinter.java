package dev.gantrywright.header;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Writes definitions as C compilers list them ({@code -E -dM}): one blank behind the name, one
 * blank where white space stood between tokens, none before {@code #}'s operand, one before {@code
 * ##}.
 */
final class MacroPrinter {
  private static final byte[] DEFINE = "#define ".getBytes(StandardCharsets.ISO_8859_1);

  private final ByteArrayOutputStream out;

  MacroPrinter(ByteArrayOutputStream out) {
    this.out = out;
  }

  void print(MacroTable.Symbol symbol) {
    out.writeBytes(DEFINE);
    name(symbol);
    MacroBody body = symbol.file().tokens().macro(symbol.directive());
    if (body == null) {
      body = new MacroBody(null, false, List.of());
    }
    if (body.functionLike()) {
      text("(" + parameters(body) + ")");
    }
    out.write(' ');
    replacement(body);
    out.write('\n');
  }

  /** A character outside ASCII is listed as a universal character name. */
  private void name(MacroTable.Symbol symbol) {
    String name = symbol.name();
    boolean ascii = name.chars().allMatch(c -> c < 0x80);
    if (ascii) {
      text(name);
      return;
    }
    byte[] latin1 = name.getBytes(StandardCharsets.ISO_8859_1);
    new String(latin1, StandardCharsets.UTF_8)
        .codePoints()
        .forEach(
            point ->
                text(point < 0x80 ? Character.toString(point) : String.format("\\U%08x", point)));
  }

  private static String parameters(MacroBody body) {
    StringBuilder text = new StringBuilder();
    int last = body.parameters().size() - 1;
    for (int i = 0; i <= last; i++) {
      boolean rest = body.variadic() && i == last;
      String name = body.parameters().get(i);
      text.append(i > 0 ? "," : "").append(rest && name.equals("__VA_ARGS__") ? "" : name);
      text.append(rest ? "..." : "");
    }
    return text.toString();
  }

  private void replacement(MacroBody body) {
    List<Token> tokens = body.tokens();
    boolean afterHash = false;
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      boolean paste = token.is("##") || token.is("%:%:");
      boolean operand = afterHash && body.indexOf(token) >= 0;
      if (i > 0 && (paste || token.blankBefore() && !operand)) {
        out.write(' ');
      }
      boolean hash = body.functionLike() && (token.is("#") || token.is("%:"));
      boolean stringizes = hash && i + 1 < tokens.size() && body.indexOf(tokens.get(i + 1)) >= 0;
      text(paste ? "##" : stringizes ? "#" : token.text());
      afterHash = stringizes;
    }
  }

  private void text(String latin1) {
    out.writeBytes(latin1.getBytes(StandardCharsets.ISO_8859_1));
  }
}
