package dev.gantrywright.image;

/**
 * The arithmetic of a Cortex-M vector table.
 *
 * <p>Source: Arm DUI0471 and the ARMv6-M / ARMv7-M architecture manuals: word 0 is the initial main
 * stack pointer, word n the handler of exception n with bit 0 set.
 */
public final class VectorTable {
  static final int SYSTEM_VECTORS = 16;
  static final int RESET = 1;

  private VectorTable() {}

  /** Length in bytes of a table with this many interrupts. */
  public static int bytes(int interrupts) {
    return 4 * (SYSTEM_VECTORS + interrupts);
  }

  /** Alignment in bytes that a table with this many interrupts needs; at least 128. */
  public static int alignment(int interrupts) {
    int words = Math.max(32, SYSTEM_VECTORS + interrupts);
    return 4 * Integer.highestOneBit(2 * words - 1);
  }

  /** Whether a handler's word has its Thumb bit; without it the core faults at once. */
  public static boolean thumb(long word) {
    return (word & 1) == 1;
  }

  /** Whether a full-descending stack may start here: word aligned, above the bank's start. */
  public static boolean stackFits(long stack, Range ram) {
    return (stack & 3) == 0 && stack > ram.start() && stack <= ram.end();
  }
}
