package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;

/**
 * A macro as its expansion needs it (C17 6.10.3).
 *
 * @param parameters parameter names, or null for an object-like macro; the last one stands for the
 *     variable arguments if {@code variadic}
 * @param variadic whether the last parameter takes the rest of the arguments
 * @param tokens the replacement list
 */
record MacroBody(List<String> parameters, boolean variadic, List<Token> tokens) {

  boolean functionLike() {
    return parameters != null;
  }

  int indexOf(Token token) {
    return parameters == null || !token.isName() ? -1 : parameters.indexOf(token.text());
  }

  /** Parses what follows the name; a malformed parameter list yields null. */
  static MacroBody parse(List<Token> behindName, boolean functionLike) {
    if (!functionLike) {
      return new MacroBody(null, false, behindName);
    }
    List<String> names = new ArrayList<>();
    boolean variadic = false;
    int i = 1;
    while (i < behindName.size() && !behindName.get(i).is(")")) {
      Token token = behindName.get(i);
      if (token.is(",")) {
        i++;
        continue;
      }
      if (token.is("...")) {
        variadic = true;
        names.add("__VA_ARGS__");
      } else if (token.isName()) {
        names.add(token.text());
        if (i + 1 < behindName.size() && behindName.get(i + 1).is("...")) {
          variadic = true; // a named rest, as the GNU compilers take it
          i++;
        }
      } else {
        return null;
      }
      i++;
    }
    if (i >= behindName.size()) {
      return null;
    }
    List<Token> body = behindName.subList(i + 1, behindName.size());
    return new MacroBody(List.copyOf(names), variadic, List.copyOf(body));
  }
}
