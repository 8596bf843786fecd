package dev.gantrywright.header;

import java.util.List;

/** What a change would do to a folder as it stands. */
sealed interface Proposal {

  /**
   * Edits of one file.
   *
   * @param offset where the directive starts, before the edits
   * @param oldLine its text before
   * @param row the row of the directive table that changes, or -1 for build settings
   * @param inserts whether a line is added behind the row rather than the row changed
   */
  record Edits(
      String path,
      List<Edit> edits,
      int offset,
      String oldLine,
      int row,
      boolean inserts,
      String note)
      implements Proposal {}

  record Already(String path, int line) implements Proposal {}

  /** Refused as things stand; {@code mayChange} when another change of the plan could settle it. */
  record No(String reason, boolean mayChange) implements Proposal {}
}
