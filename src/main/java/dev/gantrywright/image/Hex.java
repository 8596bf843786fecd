package dev.gantrywright.image;

import java.util.Locale;

/** Addresses as the trade writes them. */
final class Hex {
  private Hex() {}

  /** Eight digits: {@code 0x08000000}. */
  static String word(long value) {
    return String.format(Locale.ROOT, "0x%08X", value & 0xFFFFFFFFL);
  }

  /** Two digits: {@code 0x4F}. */
  static String octet(int value) {
    return String.format(Locale.ROOT, "0x%02X", value & 0xFF);
  }

  /** The value of one hexadecimal digit, or -1. */
  static int digit(int c) {
    if (c >= '0' && c <= '9') {
      return c - '0';
    }
    if (c >= 'A' && c <= 'F') {
      return c - 'A' + 10;
    }
    return c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
  }
}
