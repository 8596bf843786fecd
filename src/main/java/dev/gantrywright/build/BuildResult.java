package dev.gantrywright.build;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How a build ended.
 *
 * @param outcome in one word
 * @param exit the command's exit status; -1 where it never ran or was cancelled
 * @param attempts 1, or 2 after the automatic second try
 * @param retryReason why there was a second try
 * @param started when the first attempt started
 * @param took from the start of the first to the end of the last attempt
 * @param diagnostics of the last attempt, in the order of its output
 * @param sizes memory use that the output tells, where it does
 * @param artefact the image that the build left, where one matches the pattern
 * @param lastLines the end of the output
 * @param problem one line for what went wrong before or beside the command; empty where nothing did
 */
public record BuildResult(
    Outcome outcome,
    int exit,
    int attempts,
    Optional<String> retryReason,
    Instant started,
    Duration took,
    List<Diagnostic> diagnostics,
    List<ReportedSize> sizes,
    Optional<Path> artefact,
    List<String> lastLines,
    Optional<String> problem) {
  /** How it ended. */
  public enum Outcome {
    BUILT,
    FAILED,
    CANCELLED,
    /** The command ended well, but left no image. */
    NO_ARTEFACT,
    NOT_STARTED
  }

  public BuildResult {
    diagnostics = List.copyOf(diagnostics);
    sizes = List.copyOf(sizes);
    lastLines = List.copyOf(lastLines);
  }

  public long errors() {
    return diagnostics.stream().filter(d -> d.level() == Diagnostic.Level.ERROR).count();
  }

  public long warnings() {
    return diagnostics.stream().filter(d -> d.level() == Diagnostic.Level.WARNING).count();
  }
}
