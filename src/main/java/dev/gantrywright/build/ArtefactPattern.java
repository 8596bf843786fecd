package dev.gantrywright.build;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Stream;

/**
 * Which file of the folder is the image: a pattern like {@code out/*.bin} or {@code **}{@code
 * /firmware.hex}, relative to the folder.
 */
public final class ArtefactPattern {
  private static final int DEEPEST = 12;
  private static final int LONGEST = 200;
  private static final int MOST_STARS = 6;

  private final String text;
  private final PathMatcher matcher;

  private ArtefactPattern(String text, PathMatcher matcher) {
    this.text = text;
    this.matcher = matcher;
  }

  /**
   * @throws IllegalArgumentException where the pattern cannot be read or leads out of the folder
   */
  public static ArtefactPattern of(String text) {
    if (text == null || text.isBlank()) {
      return none();
    }
    String pattern = text.strip().replace('\\', '/');
    if (pattern.startsWith("/") || pattern.contains("..") || pattern.matches("[A-Za-z]:.*")) {
      throw new IllegalArgumentException(
          "the artefact pattern " + text + " leads out of the firmware folder; make it relative");
    }
    if (pattern.length() > LONGEST || stars(pattern) > MOST_STARS) {
      throw new IllegalArgumentException(
          "the artefact pattern is too long or has more than "
              + MOST_STARS
              + " stars; a folder and *.bin are enough");
    }
    try {
      return new ArtefactPattern(
          pattern, FileSystems.getDefault().getPathMatcher("glob:" + pattern));
    } catch (PatternSyntaxException e) {
      throw new IllegalArgumentException(
          "the artefact pattern " + text + " cannot be read: " + e.getDescription());
    }
  }

  /** Runs of stars: each one multiplies how long a name that does not match is tried. */
  private static long stars(String pattern) {
    return pattern.replaceAll("\\*+", "*").chars().filter(c -> c == '*').count();
  }

  /** A build that leaves no image. */
  public static ArtefactPattern none() {
    return new ArtefactPattern("", p -> false);
  }

  public String text() {
    return text;
  }

  boolean wantsNothing() {
    return text.isEmpty();
  }

  /** Every match, newest first. */
  public List<Path> all(Path folder) {
    if (wantsNothing()) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder, DEEPEST)) {
      List<Path> found =
          new ArrayList<>(
              files
                  .filter(Files::isRegularFile)
                  .filter(f -> matcher.matches(folder.relativize(f)))
                  .toList());
      found.sort(Comparator.comparing(ArtefactPattern::written).reversed().thenComparing(f -> f));
      return found;
    } catch (IOException | UncheckedIOException e) {
      // A folder that vanishes while it is read holds no image.
      return List.of();
    }
  }

  /** The match that was written last. */
  public Optional<Path> newest(Path folder) {
    return all(folder).stream().findFirst();
  }

  private static FileTime written(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }
}
