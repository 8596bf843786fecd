package dev.gantrywright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A path as the user gives it. An empty one, as an unset variable of a script leaves it, would
 * stand for the folder that the user happens to be in.
 */
final class GivenPath implements ITypeConverter<Path> {
  @Override
  public Path convert(String text) {
    if (text.isEmpty()) {
      throw new TypeConversionException("the path is empty; give a file or a folder");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException wrong) {
      throw new TypeConversionException("'" + text + "' is no path: " + wrong.getReason());
    }
  }
}
