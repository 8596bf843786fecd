package dev.gantrywright.cli;

import java.math.BigDecimal;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a whole number, also one written as 16e6 or 16000000.0. */
final class WholeNumber implements ITypeConverter<Long> {
  @Override
  public Long convert(String text) {
    try {
      BigDecimal number = new BigDecimal(text.strip());
      if (number.abs().compareTo(BigDecimal.valueOf(Long.MAX_VALUE)) <= 0) {
        return number.longValueExact();
      }
    } catch (ArithmeticException | NumberFormatException e) {
      throw new TypeConversionException("'" + text + "' is not a whole number");
    }
    throw new TypeConversionException("'" + text + "' is too large");
  }
}
