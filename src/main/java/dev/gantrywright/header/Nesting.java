package dev.gantrywright.header;

import java.util.ArrayDeque;
import java.util.Deque;

/** Which branch of a conditional each directive stands in. */
final class Nesting {
  private Nesting() {}

  /** For each row the row of the {@code #if}, {@code #elif} or {@code #else} above it, or -1. */
  static int[] parents(DirectiveTable table) {
    int[] out = new int[table.size()];
    Deque<Integer> branches = new ArrayDeque<>();
    for (int row = 0; row < out.length; row++) {
      DirectiveKind kind = table.kind(row);
      if (kind.continuesConditional() || kind == DirectiveKind.ENDIF) {
        branches.poll();
      }
      out[row] = branches.isEmpty() ? -1 : branches.peek();
      if (kind.opensConditional() || kind.continuesConditional()) {
        branches.push(row);
      }
    }
    return out;
  }
}
