package dev.gantrywright.patch;

import java.util.List;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/**
 * What was changed in a patched folder, and why: {@value #FILE} in its root.
 *
 * @param format version of this file's shape
 * @param source name of the firmware folder
 * @param profile name of the printer profile; empty where the changes came one by one
 * @param files the changed files
 * @param leftOut links that lead out and things that are no files, each with the reason
 */
public record Manifest(
    int format, String source, String profile, List<ChangedFile> files, List<String> leftOut) {
  /** The manifest's file name. */
  public static final String FILE = "gantrywright-manifest.json";

  /** The version that this program writes. */
  public static final int FORMAT = 1;

  private static final JsonMapper JSON =
      JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

  public Manifest {
    files = List.copyOf(files);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * One changed file.
   *
   * @param path relative to the folder
   * @param sha256Before of the file in the firmware folder, lower-case hex
   * @param sha256After of the file in the patched folder, lower-case hex
   * @param lines the changed lines
   */
  public record ChangedFile(
      String path, String sha256Before, String sha256After, List<PlannedLine> lines) {
    public ChangedFile {
      lines = List.copyOf(lines);
    }
  }

  byte[] bytes() {
    return (JSON.writeValueAsString(this) + "\n").getBytes(java.nio.charset.StandardCharsets.UTF_8);
  }
}
