package dev.gantrywright.header;

/** Finds the file that an {@code #include} means. */
interface IncludeResolver {
  /**
   * The file, or null if there is none.
   *
   * @param header the name between the quotes or angle brackets
   * @param angled whether it stands in angle brackets
   * @param from the file that includes it
   * @param next whether to go on behind the folder where {@code from} was found
   */
  SourceFile find(String header, boolean angled, SourceFile from, boolean next);

  /** Finds nothing: every header is outside. */
  static IncludeResolver none() {
    return (header, angled, from, next) -> null;
  }
}
