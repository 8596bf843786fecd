package dev.gantrywright.names;

import java.util.List;

/**
 * A field with the place found for it.
 *
 * @param score what speaks for it, less what speaks against it
 * @param share score as a share of a perfect one
 * @param margin how far the next best candidate that is free lies behind
 * @param others the next best candidates
 */
record Match(
    FieldRow row,
    Candidate candidate,
    double score,
    double share,
    double margin,
    List<Rival> others) {
  /** Another candidate for the same field. */
  record Rival(Candidate candidate, double score) {}
}
