package dev.gantrywright.load;

import dev.gantrywright.load.LoadOutcome.State;
import java.io.IOException;
import java.io.InputStream;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * Reads a card that was in the machine: did the loader take the image? Bytes decide; time stamps of
 * cards written by a board without a clock mean nothing and are only shown.
 */
public final class ReturnedCard {
  private ReturnedCard() {}

  /** The state of the sign before the copy, for {@link PendingLoad#signBefore}. */
  public static Optional<String> hashOf(Card card, String name) throws IOException {
    Optional<Card.Entry> entry = card.find(name);
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    try (InputStream in = card.read(entry.get().name())) {
      return Optional.of(Hashes.of(in));
    }
  }

  /**
   * Looks at the card.
   *
   * @throws IOException where it cannot be read
   */
  public static LoadOutcome look(Card card, PendingLoad pending) throws IOException {
    Optional<String> original = hashOf(card, pending.name());
    if (original.isPresent()) {
      return stillThere(pending, original.get());
    }
    return switch (pending.sign()) {
      case GONE ->
          new LoadOutcome(
              State.LOADED,
              pending.name() + " is gone, which is this loader's sign that it was taken.",
              "Go on to Prove.");
      case NONE ->
          new LoadOutcome(
              State.UNSURE,
              pending.name() + " is gone, though this loader leaves the card as it is.",
              "Is this the card? Copy again, or correct the sign in the board sheet.");
      case RENAMED -> renamed(card, pending);
    };
  }

  private static LoadOutcome stillThere(PendingLoad pending, String hash) {
    if (!hash.equals(pending.sha256())) {
      return new LoadOutcome(
          State.NOT_LOADED,
          pending.name() + " on this card is another image than the one that was copied.",
          "Is this the card? Copy again.");
    }
    if (pending.sign() == LoaderSign.NONE) {
      return new LoadOutcome(
          State.UNSURE,
          pending.name() + " is still there, as this loader leaves it.",
          "Ask the board which firmware it runs.");
    }
    return new LoadOutcome(
        State.NOT_LOADED,
        pending.name() + " is still there, unchanged: the loader did not take it.",
        "Check name, file system (FAT) and card size, and that the board was switched off and on "
            + "with the card in.");
  }

  private static LoadOutcome renamed(Card card, PendingLoad pending) throws IOException {
    String to = pending.renamedTo().orElse("");
    Optional<Card.Entry> entry = to.isEmpty() ? anyWith(card, pending) : card.find(to);
    if (entry.isEmpty()) {
      return new LoadOutcome(
          State.UNSURE,
          pending.name()
              + " is gone, and there is no "
              + (to.isEmpty() ? "file with its bytes" : to)
              + ".",
          "Is this the card? Copy again.");
    }
    String hash = hashOf(card, entry.get().name()).orElse("");
    if (hash.equals(pending.sha256())) {
      return new LoadOutcome(
          State.LOADED,
          entry.get().name()
              + " holds the image that was copied (stamped "
              + entry.get().written().truncatedTo(ChronoUnit.SECONDS)
              + "): the loader took it.",
          "Go on to Prove.");
    }
    boolean old = pending.signBefore().filter(hash::equals).isPresent();
    return new LoadOutcome(
        State.UNSURE,
        old
            ? to + " was there before and is from an earlier load; " + pending.name() + " is gone."
            : to + " holds another image than the one that was copied.",
        "Copy again, and take the old " + to + " away first.");
  }

  private static Optional<Card.Entry> anyWith(Card card, PendingLoad pending) throws IOException {
    for (Card.Entry e : card.list()) {
      if (hashOf(card, e.name()).filter(pending.sha256()::equals).isPresent()) {
        return Optional.of(e);
      }
    }
    return Optional.empty();
  }
}
