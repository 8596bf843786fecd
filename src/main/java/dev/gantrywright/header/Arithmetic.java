package dev.gantrywright.header;

/** The operators of a condition on 64-bit values, with C's conversions (C17 6.3.1.8, 6.5). */
final class Arithmetic {
  private Arithmetic() {}

  /** The result of a binary operator other than {@code &&}, {@code ||} and the comma. */
  static CValue apply(String op, CValue a, CValue b) {
    if (!a.known() || !b.known()) {
      return CValue.UNKNOWN;
    }
    boolean unsigned = a.unsigned() || b.unsigned();
    long x = a.bits();
    long y = b.bits();
    return switch (op) {
      case "*" -> value(x * y, unsigned);
      case "/", "%" -> divided(op, x, y, unsigned);
      case "+" -> value(x + y, unsigned);
      case "-" -> value(x - y, unsigned);
      case "<<" -> shifted(a, b, true);
      case ">>" -> shifted(a, b, false);
      case "<" -> CValue.of(compare(x, y, unsigned) < 0);
      case ">" -> CValue.of(compare(x, y, unsigned) > 0);
      case "<=" -> CValue.of(compare(x, y, unsigned) <= 0);
      case ">=" -> CValue.of(compare(x, y, unsigned) >= 0);
      case "==" -> CValue.of(x == y);
      case "!=" -> CValue.of(x != y);
      case "&" -> value(x & y, unsigned);
      case "^" -> value(x ^ y, unsigned);
      case "|" -> value(x | y, unsigned);
      default -> throw new ConditionError("operator \"" + op + "\" cannot stand in a condition");
    };
  }

  private static CValue value(long bits, boolean unsigned) {
    return new CValue(bits, unsigned, true);
  }

  private static int compare(long x, long y, boolean unsigned) {
    return unsigned ? Long.compareUnsigned(x, y) : Long.compare(x, y);
  }

  private static CValue divided(String op, long x, long y, boolean unsigned) {
    if (y == 0) {
      throw new ConditionError("division by zero");
    }
    boolean quotient = op.equals("/");
    if (unsigned) {
      return value(quotient ? Long.divideUnsigned(x, y) : Long.remainderUnsigned(x, y), true);
    }
    return value(quotient ? x / y : x % y, false);
  }

  /**
   * A shift by a negative count goes the other way and one by 64 or more shifts all out, as GNU's.
   */
  private static CValue shifted(CValue a, CValue b, boolean left) {
    boolean negative = !b.unsigned() && b.bits() < 0;
    long count = negative ? -b.bits() : b.bits();
    boolean toLeft = left != negative;
    boolean allOut = Long.compareUnsigned(count, 64) >= 0;
    long bits;
    if (toLeft) {
      bits = allOut ? 0 : a.bits() << count;
    } else if (a.unsigned()) {
      bits = allOut ? 0 : a.bits() >>> count;
    } else {
      bits = a.bits() >> (allOut ? 63 : count);
    }
    return value(bits, a.unsigned());
  }

  /** The result of a unary operator. */
  static CValue unary(String op, CValue a) {
    if (op.equals("!")) {
      return a.known() ? CValue.of(a.bits() == 0) : CValue.UNKNOWN;
    }
    if (!a.known()) {
      return CValue.UNKNOWN;
    }
    return switch (op) {
      case "-" -> value(-a.bits(), a.unsigned());
      case "~" -> value(~a.bits(), a.unsigned());
      default -> a;
    };
  }
}
