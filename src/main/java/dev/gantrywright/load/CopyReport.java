package dev.gantrywright.load;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;

/**
 * What a verified copy did.
 *
 * @param name the name on the card
 * @param bytes size
 * @param sha256 of the source, and of what was read back
 * @param alreadyThere whether the same image stood there before, so that nothing was written
 * @param fromCard whether the read-back came from the card itself and not from a cache
 * @param previousKept where the image that stood there before is kept now
 * @param when it was done
 */
public record CopyReport(
    String name,
    long bytes,
    String sha256,
    boolean alreadyThere,
    boolean fromCard,
    Optional<Path> previousKept,
    Instant when) {}
