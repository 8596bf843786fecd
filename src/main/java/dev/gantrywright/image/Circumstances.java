package dev.gantrywright.image;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * What surrounds the image.
 *
 * @param builtAt when the file was written
 * @param newestSource the file of the patched folder that was written last
 * @param lastLoadedSha256 of the image that went onto this board last
 * @param ownNames names of the board that the image is for
 * @param otherNames names of boards that it is not for
 */
public record Circumstances(
    Optional<Instant> builtAt,
    Optional<Source> newestSource,
    Optional<String> lastLoadedSha256,
    List<String> ownNames,
    List<String> otherNames) {
  public Circumstances {
    ownNames = List.copyOf(ownNames);
    otherNames = List.copyOf(otherNames);
  }

  /** A file of the patched folder and when it was written. */
  public record Source(Path file, Instant written) {}

  /** Nothing known. */
  public static Circumstances unknown() {
    return new Circumstances(
        Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of());
  }

  public Circumstances boardNames(List<String> own, List<String> others) {
    return new Circumstances(builtAt, newestSource, lastLoadedSha256, own, others);
  }

  public Circumstances built(Instant at, Source newest) {
    return new Circumstances(
        Optional.of(at), Optional.of(newest), lastLoadedSha256, ownNames, otherNames);
  }

  public Circumstances lastLoaded(String sha256) {
    return new Circumstances(builtAt, newestSource, Optional.of(sha256), ownNames, otherNames);
  }
}
