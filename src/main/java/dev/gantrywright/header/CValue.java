package dev.gantrywright.header;

/**
 * A value in a condition: {@code intmax_t} or {@code uintmax_t} of 64 bits (C17 6.10.1p4), or not
 * known.
 *
 * @param bits the value, two's complement
 * @param unsigned whether it is a {@code uintmax_t}
 * @param known false when it depends on an unknown name; then bits mean nothing
 */
record CValue(long bits, boolean unsigned, boolean known) {
  static final CValue ZERO = signed(0);
  static final CValue ONE = signed(1);
  static final CValue UNKNOWN = new CValue(0, false, false);

  static CValue signed(long bits) {
    return new CValue(bits, false, true);
  }

  static CValue of(boolean truth) {
    return truth ? ONE : ZERO;
  }

  static CValue of(Truth truth) {
    return truth == Truth.UNKNOWN ? UNKNOWN : of(truth == Truth.TRUE);
  }

  Truth truth() {
    return known ? Truth.of(bits != 0) : Truth.UNKNOWN;
  }

  CValue asUnsigned(boolean wanted) {
    return wanted == unsigned ? this : new CValue(bits, wanted, known);
  }
}
