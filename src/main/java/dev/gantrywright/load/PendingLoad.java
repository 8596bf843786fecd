package dev.gantrywright.load;

import java.time.Instant;
import java.util.Optional;

/**
 * A copy whose loading is not yet proven.
 *
 * @param name the file that was put on the card
 * @param sha256 of it
 * @param when it was put there
 * @param sign what the loader does once it has taken the file
 * @param renamedTo the name that it then bears
 * @param signBefore SHA-256 of a file that bore that name before; an old sign proves nothing
 */
public record PendingLoad(
    String name,
    String sha256,
    Instant when,
    LoaderSign sign,
    Optional<String> renamedTo,
    Optional<String> signBefore) {
  /** What the loader will do next, in one sentence. */
  public String next() {
    return switch (sign) {
      case RENAMED ->
          "The loader takes "
              + name
              + " at the next start and renames it"
              + renamedTo.map(n -> " to " + n).orElse("")
              + "; bring the card back to see that it did.";
      case GONE ->
          "The loader takes "
              + name
              + " at the next start and removes it; bring the card back to "
              + "see that it did.";
      case NONE -> "The loader leaves no sign on the card; ask the board which firmware it runs.";
    };
  }
}
