package dev.gantrywright.rules;

/** A pattern of field paths: {@code *} is one segment, {@code **} at the end the rest. */
record PathPattern(String[] segments) {
  static PathPattern of(String pattern) {
    return new PathPattern(pattern.split("\\.", -1));
  }

  /**
   * Whether a change at the path can touch a field of this pattern: the path matches, stands above
   * a match, or below one.
   */
  boolean touches(String[] path) {
    int shared = Math.min(path.length, segments.length);
    for (int at = 0; at < shared; at++) {
      String want = segments[at];
      if (want.equals("**")) {
        return true;
      }
      if (!want.equals("*") && !want.equals(path[at])) {
        return false;
      }
    }
    return true;
  }
}
