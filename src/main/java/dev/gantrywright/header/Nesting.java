package dev.gantrywright.header;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/** Which branch of a conditional each directive stands in. */
final class Nesting {
  private Nesting() {}

  /** For each row of a branch the row of the branch before it in its chain, otherwise -1. */
  static int[] before(DirectiveTable table) {
    int[] before = new int[table.size()];
    Arrays.fill(before, -1);
    for (int row = 0; row < before.length; row++) {
      DirectiveKind kind = table.kind(row);
      boolean branch = kind.opensConditional() || kind.continuesConditional();
      int next = branch ? table.link(row) : row;
      if (next != row && next < before.length) {
        before[next] = row;
      }
    }
    return before;
  }

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
