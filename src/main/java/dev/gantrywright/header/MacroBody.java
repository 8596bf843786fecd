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
      MacroBody macro = of(behindName);
      return macro.pastesAtAnEnd() ? null : macro;
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
    }
    return !pastesAtAnEnd();
  }

  private static boolean isPaste(Token token) {
    return token.is("##") || token.is("%:%:");
  }

  private boolean pastesAtAnEnd() {
    return !tokens.isEmpty() && (isPaste(tokens.get(0)) || isPaste(tokens.get(tokens.size() - 1)));
  }

  /**
   * Whether the text behind an object-like macro's name could begin or end with {@code ##}; spares
   * most definitions their tokens.
   *
   * @param plain whether the text has no comment, literal or splice
   */
  static boolean mayPasteAtAnEnd(byte[] bytes, int from, int to, boolean plain) {
    if (!plain) {
      for (int i = from; i < to; i++) {
        if (bytes[i] == '#' || bytes[i] == '%') {
          return true;
        }
      }
      return false;
    }
    int first = from;
    int last = to - 1;
    while (first <= last && CharacterClass.blank(bytes[first])) {
      first++;
    }
    while (last > first && CharacterClass.blank(bytes[last])) {
      last--;
    }
    return last > first
        && (bytes[first] == '#' || bytes[first] == '%' || bytes[last] == '#' || bytes[last] == ':');
  }
}
