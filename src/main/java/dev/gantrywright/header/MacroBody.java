package dev.gantrywright.header;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A macro as its expansion needs it (C17 6.10.3).
 *
 * @param parameters parameter names, or null for an object-like macro; the last one stands for the
 *     variable arguments if {@code variadic}
 * @param variadic whether the last parameter takes the rest of the arguments
 * @param tokens the replacement list
 * @param places the index of each parameter
 */
record MacroBody(
    List<String> parameters, boolean variadic, List<Token> tokens, Map<String, Integer> places) {

  /** An object-like macro. */
  static MacroBody of(List<Token> tokens) {
    return new MacroBody(null, false, tokens, Map.of());
  }

  boolean functionLike() {
    return parameters != null;
  }

  int indexOf(Token token) {
    return places.isEmpty() || !token.isName() ? -1 : places.getOrDefault(token.text(), -1);
  }

  /** Parses what follows the name; a definition that C does not allow yields null. */
  static MacroBody parse(List<Token> behindName, boolean functionLike) {
    if (!functionLike) {
      return of(behindName);
    }
    Map<String, Integer> names = new LinkedHashMap<>();
    int i = 1;
    boolean variadic = false;
    boolean more = i < behindName.size() && !behindName.get(i).is(")");
    while (more) {
      Token token = i < behindName.size() ? behindName.get(i++) : null;
      boolean dots = token != null && token.is("...");
      if (token == null || !dots && !token.isName() || names.containsKey(token.text())) {
        return null;
      }
      names.put(dots ? "__VA_ARGS__" : token.text(), names.size());
      variadic = dots;
      if (!dots && i < behindName.size() && behindName.get(i).is("...")) {
        variadic = true; // a named rest, as the GNU compilers take it
        i++;
      }
      more = !variadic && i < behindName.size() && behindName.get(i).is(",");
      i += more ? 1 : 0;
    }
    if (i >= behindName.size() || !behindName.get(i).is(")")) {
      return null;
    }
    List<Token> body = List.copyOf(behindName.subList(i + 1, behindName.size()));
    List<String> parameters = List.copyOf(names.keySet());
    MacroBody macro = new MacroBody(parameters, variadic, body, names);
    return macro.operatorsHaveOperands() ? macro : null;
  }

  /** C17 6.10.3.2p1 and 6.10.3.3p1. */
  private boolean operatorsHaveOperands() {
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      boolean last = i + 1 == tokens.size();
      if ((token.is("#") || token.is("%:")) && (last || indexOf(tokens.get(i + 1)) < 0)) {
        return false;
      }
      if ((token.is("##") || token.is("%:%:")) && (last || i == 0)) {
        return false;
      }
    }
    return true;
  }
}
