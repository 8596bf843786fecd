package dev.gantrywright.header;

import java.util.LinkedHashSet;
import java.util.Set;

/** The names that the conditions of a file ask for and that the file does not define itself. */
final class ConditionWords {
  private ConditionWords() {}

  static Set<String> of(SourceFile file) {
    Set<String> out = new LinkedHashSet<>();
    DirectiveTable table = file.table();
    for (int row = 0; row < table.size(); row++) {
      switch (table.kind(row)) {
        case IFDEF, IFNDEF, ELIFDEF, ELIFNDEF -> out.add(file.name(row));
        case IF, ELIF -> {
          for (Token token : file.tokens().behind(row)) {
            if (token.isName()) {
              out.add(token.text());
            }
          }
        }
        default -> {}
      }
    }
    out.removeIf(name -> file.names().contains(name));
    return out;
  }
}
