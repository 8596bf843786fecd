package dev.gantrywright.app.fleet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * The printers below a folder.
 *
 * @param folder as it was given
 * @param files their profiles, sorted by path
 */
public record Fleet(Path folder, List<Path> files) {
  private static final String ENDING = ".printer.json";

  public Fleet {
    files = List.copyOf(files);
  }

  /**
   * Looks for every {@code *.printer.json} below a folder.
   *
   * @throws IOException where the folder cannot be read
   */
  public static Fleet in(Path folder) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      return new Fleet(
          folder,
          walk.filter(file -> file.getFileName().toString().endsWith(ENDING)).sorted().toList());
    } catch (UncheckedIOException unreadable) {
      throw unreadable.getCause();
    }
  }

  /** A printer's file as the reports name it: relative to the folder, with {@code /}. */
  public String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }

  /** The name of a printer's own folder in an output folder: its file's name without the ending. */
  static String stem(String name) {
    return name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
  }
}
