package dev.gantrywright.header;

import java.math.BigInteger;

/** Integer and character constants of a condition (C17 6.4.4.1, 6.4.4.4). */
final class NumberReader {
  private static final BigInteger SIGNED_MAX = BigInteger.valueOf(Long.MAX_VALUE);

  private NumberReader() {}

  /** The value of an integer constant; too large for {@code intmax_t} makes it unsigned. */
  static CValue integer(String text) {
    int end = text.length();
    boolean unsigned = false;
    int longs = 0;
    while (end > 0 && "uUlL".indexOf(text.charAt(end - 1)) >= 0) {
      char c = Character.toLowerCase(text.charAt(--end));
      boolean repeated = c == 'u' ? unsigned : longs == 2;
      boolean mixed = c == 'l' && longs == 1 && text.charAt(end + 1) != text.charAt(end);
      if (repeated || mixed) {
        throw new ConditionError("\"" + text + "\" is not an integer");
      }
      unsigned |= c == 'u';
      longs += c == 'l' ? 1 : 0;
    }
    String digits = text.substring(0, end);
    int radix = 10;
    if (digits.startsWith("0x") || digits.startsWith("0X")) {
      radix = 16;
      digits = digits.substring(2);
    } else if (digits.startsWith("0b") || digits.startsWith("0B")) {
      radix = 2; // GNU; standard only later
      digits = digits.substring(2);
    } else if (digits.length() > 1 && digits.startsWith("0")) {
      radix = 8;
    }
    try {
      if (digits.isEmpty() || !Character.isLetterOrDigit(digits.charAt(0))) {
        throw new NumberFormatException();
      }
      BigInteger value = new BigInteger(digits, radix);
      boolean large = value.compareTo(SIGNED_MAX) > 0;
      return new CValue(value.longValue(), unsigned || large, true);
    } catch (NumberFormatException e) {
      String octal = radix == 8 ? "; a 0 before it makes it octal" : "";
      throw new ConditionError("\"" + text + "\" is not an integer" + octal);
    }
  }

  /**
   * The value of a character constant. A plain one is an {@code int} whose characters are signed,
   * as on AVR, ARM with GNU's default for bare boards differs only above 127.
   */
  static CValue character(String text) {
    int quote = text.indexOf('\'');
    String prefix = text.substring(0, quote);
    boolean wide = !prefix.isEmpty() && !prefix.equals("u8");
    String body = text.substring(quote + 1, text.length() - 1);
    if (body.isEmpty()) {
      throw new ConditionError("an empty character constant has no value");
    }
    if (wide) {
      return wide(prefix, body);
    }
    long value = 0;
    int count = 0;
    int[] at = {0};
    while (at[0] < body.length()) {
      long c = escape(body, at) & 0xff;
      value = value << 8 | c;
      count++;
    }
    return CValue.signed(count == 1 ? (byte) value : (int) value);
  }

  private static CValue wide(String prefix, String body) {
    int[] at = {0};
    long value = 0;
    while (at[0] < body.length()) {
      value = escape(body, at);
    }
    return switch (prefix) {
      case "u" -> new CValue(value & 0xffff, true, true);
      case "U" -> new CValue(value & 0xffffffffL, true, true);
      default -> CValue.signed((int) value);
    };
  }

  static long escape(String s, int[] at) {
    char c = s.charAt(at[0]++);
    if (c != '\\' || at[0] >= s.length()) {
      return c;
    }
    char e = s.charAt(at[0]++);
    return switch (e) {
      case 'a' -> 7;
      case 'b' -> 8;
      case 't' -> 9;
      case 'n' -> 10;
      case 'v' -> 11;
      case 'f' -> 12;
      case 'r' -> 13;
      case 'e', 'E' -> 27; // GNU
      case 'x' -> digits(s, at, 16, Integer.MAX_VALUE);
      case 'u' -> digits(s, at, 16, 4);
      case 'U' -> digits(s, at, 16, 8);
      case '0', '1', '2', '3', '4', '5', '6', '7' -> {
        at[0]--;
        yield digits(s, at, 8, 3);
      }
      default -> e;
    };
  }

  private static long digits(String s, int[] at, int radix, int most) {
    long value = 0;
    int count = 0;
    while (at[0] < s.length() && count < most) {
      int d = Character.digit(s.charAt(at[0]), radix);
      if (d < 0) {
        break;
      }
      value = value * radix + d;
      at[0]++;
      count++;
    }
    return value;
  }
}
