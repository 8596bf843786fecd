package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Works out for which address a raw Cortex-M binary was linked: the base at which most of its code
 * pointers land on the first instruction of a function.
 *
 * @param address the base that fits best
 * @param hits pointers that land on a function start there
 * @param runnerUp the same for the second-best base
 */
record LinkAddress(long address, int hits, int runnerUp) {
  private static final int STEP = 0x100;
  private static final int FEWEST = 4;
  private static final int MOST_POINTERS = 4096;

  /** The base, where one fits clearly better than any other. */
  static Optional<LinkAddress> of(byte[] program, Range flash) {
    List<List<Integer>> starts = functionStarts(program);
    int[] hits = new int[(int) ((flash.size() + STEP - 1) / STEP)];
    for (long pointer : pointers(program, flash)) {
      // Bases are multiples of the step, so only starts with the same low bits can match.
      long target = pointer - 1 - flash.start();
      for (int start : starts.get((int) Math.floorMod(target, (long) STEP))) {
        long base = target - start;
        if (base >= 0) {
          hits[(int) (base / STEP)]++;
        }
      }
    }
    int best = 0;
    int runnerUp = 0;
    for (int i = 1; i < hits.length; i++) {
      if (hits[i] > hits[best]) {
        runnerUp = hits[best];
        best = i;
      } else {
        runnerUp = Math.max(runnerUp, hits[i]);
      }
    }
    return hits.length > 0 && hits[best] >= FEWEST && hits[best] >= 2 * runnerUp
        ? Optional.of(new LinkAddress(flash.start() + (long) best * STEP, hits[best], runnerUp))
        : Optional.empty();
  }

  /**
   * Offsets of PUSH {…} in its 16-bit and 32-bit form, by their low bits; source: ARMv7-M ARM, A7.7
   * (memory).
   */
  private static List<List<Integer>> functionStarts(byte[] program) {
    List<List<Integer>> out = new ArrayList<>();
    for (int i = 0; i < STEP; i++) {
      out.add(new ArrayList<>());
    }
    for (int i = 0; i + 1 < program.length; i += 2) {
      int high = program[i + 1] & 0xFF;
      boolean push = high == 0xB5 || high == 0xB4;
      boolean pushWide = high == 0xE9 && (program[i] & 0xFF) == 0x2D;
      if (push || pushWide) {
        out.get(i % STEP).add(i);
      }
    }
    return out;
  }

  private static TreeSet<Long> pointers(byte[] program, Range flash) {
    TreeSet<Long> out = new TreeSet<>();
    for (int i = 0; i + 3 < program.length && out.size() < MOST_POINTERS; i += 4) {
      long word =
          (program[i] & 0xFFL)
              | (program[i + 1] & 0xFFL) << 8
              | (program[i + 2] & 0xFFL) << 16
              | (program[i + 3] & 0xFFL) << 24;
      if ((word & 1) == 1 && flash.contains(word)) {
        out.add(word);
      }
    }
    return out;
  }
}
