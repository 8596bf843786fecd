package dev.gantrywright.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a count of bytes: 32768, 0x8000 or 32K. */
final class Offset implements ITypeConverter<Long> {
  private static final long MOST = 1L << 32;

  @Override
  public Long convert(String text) {
    String t = text.strip().replace("_", "");
    try {
      long scale = 1;
      if (t.matches("(?i)[0-9]+k(i?b)?")) {
        scale = 1024;
        t = t.replaceAll("(?i)k(i?b)?$", "");
      }
      long value = t.startsWith("0x") || t.startsWith("0X") ? Long.decode(t) : Long.parseLong(t);
      if (value < 0 || value * scale > MOST) {
        throw new TypeConversionException("'" + text + "' lies outside any flash memory");
      }
      return value * scale;
    } catch (NumberFormatException e) {
      throw new TypeConversionException(
          "'" + text + "' is no count of bytes; give one like 32768, 0x8000 or 32K");
    }
  }
}
