package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * Puts an image on a card under a name that appears only when all of it is there and proven.
 *
 * <p>The bytes go under a working name, are pushed out to the card, read back from it and compared;
 * then one rename gives the final name. A power cut at any moment leaves the old file, the new file
 * or none under that name, never half of one; at worst the working file stays and is removed next
 * time.
 */
public final class VerifiedCopy {
  /** The working name; 8.3, so that it never gets a long name beside it. */
  public static final String WORKING_NAME = "GWCOPY.TMP";

  /** Room beyond the image itself that must be free: folder entries and whole clusters. */
  static final long SLACK_BYTES = 64 << 10;

  private final Card card;
  private final KeptImages kept;
  private final Clock clock;
  private final Consumer<CopyStep> steps;
  private final BooleanSupplier stopped;

  /**
   * A copy that nobody ends.
   *
   * @param kept where the image that is replaced is kept
   * @param steps hears each step as it begins
   */
  public VerifiedCopy(Card card, KeptImages kept, Clock clock, Consumer<CopyStep> steps) {
    this(card, kept, clock, steps, () -> false);
  }

  /**
   * @param kept where the image that is replaced is kept
   * @param steps hears each step as it begins
   * @param stopped asked before the image gets its name; true takes it back
   */
  public VerifiedCopy(
      Card card, KeptImages kept, Clock clock, Consumer<CopyStep> steps, BooleanSupplier stopped) {
    this.card = card;
    this.kept = kept;
    this.clock = clock;
    this.steps = steps;
    this.stopped = stopped;
  }

  /**
   * Copies.
   *
   * @throws LoadProblem where the card cannot take it or gives back something else; the final name
   *     then bears what it bore before, or nothing
   */
  public CopyReport copy(byte[] image, String name) throws LoadProblem {
    String hash = Hashes.of(image);
    checkName(name);
    try {
      steps.accept(CopyStep.LOOK);
      if (card.find(WORKING_NAME).isPresent()) {
        card.delete(WORKING_NAME);
      }
      Optional<Card.Entry> before = card.find(name);
      if (before.isPresent() && hash.equals(readHash(before.get().name()))) {
        boolean fromCard = card.forgetCached(before.get().name());
        sameAgain(hash, before.get().name());
        steps.accept(CopyStep.DONE);
        return new CopyReport(
            name, image.length, hash, true, fromCard, Optional.empty(), clock.instant());
      }
      room(image.length);
      Optional<Path> previous = keepPrevious(before);
      steps.accept(CopyStep.WRITE);
      card.write(WORKING_NAME, image);
      steps.accept(CopyStep.READ_BACK);
      boolean fromCard = card.forgetCached(WORKING_NAME);
      compare(hash, WORKING_NAME);
      if (stopped.getAsBoolean()) {
        card.delete(WORKING_NAME);
        throw new LoadProblem(
            LoadProblem.Kind.WRITE, "load cancelled; " + card.shown() + " is as it was");
      }
      steps.accept(CopyStep.NAME);
      card.rename(WORKING_NAME, name);
      steps.accept(CopyStep.READ_AGAIN);
      card.forgetCached(name);
      compare(hash, name);
      steps.accept(CopyStep.DONE);
      return new CopyReport(name, image.length, hash, false, fromCard, previous, clock.instant());
    } catch (IOException e) {
      throw new LoadProblem(
          LoadProblem.Kind.WRITE,
          "writing to "
              + card.shown()
              + " failed: "
              + reason(e)
              + "; check that the card is in, not locked and not full",
          e);
    }
  }

  private static void checkName(String name) throws LoadProblem {
    if (name.isBlank()
        || name.contains("/")
        || name.contains("\\")
        || name.equals("..")
        || name.equals(".")
        || name.equalsIgnoreCase(WORKING_NAME)) {
      throw new LoadProblem(
          LoadProblem.Kind.NAME, "'" + name + "' is no file name for a card; give a plain name");
    }
  }

  private void room(long bytes) throws IOException, LoadProblem {
    long free = card.freeBytes();
    if (free < bytes + SLACK_BYTES) {
      throw new LoadProblem(
          LoadProblem.Kind.SPACE,
          String.format(
              java.util.Locale.ROOT,
              "%s has %,d bytes free, and the image needs %,d; make room on the card",
              card.shown(),
              free,
              bytes + SLACK_BYTES));
    }
  }

  private Optional<Path> keepPrevious(Optional<Card.Entry> before) throws IOException {
    if (before.isEmpty() || before.get().bytes() > KeptImages.LARGEST_BYTES) {
      return Optional.empty();
    }
    steps.accept(CopyStep.KEEP_PREVIOUS);
    try (InputStream in = card.read(before.get().name())) {
      return Optional.of(kept.keep(before.get().name(), in.readAllBytes()));
    }
  }

  private void compare(String wanted, String name) throws IOException, LoadProblem {
    if (!wanted.equals(readHash(name))) {
      card.delete(name);
      throw new LoadProblem(
          LoadProblem.Kind.DIFFERENT,
          card.shown()
              + " gave back other bytes than were written, so the file was taken away; "
              + "the card or its reader is faulty, use another");
    }
  }

  /** The first read may have come from a cache; this one is the one that counts. */
  private void sameAgain(String wanted, String name) throws IOException, LoadProblem {
    if (!wanted.equals(readHash(name))) {
      throw new LoadProblem(
          LoadProblem.Kind.DIFFERENT,
          card.shown()
              + " reads differently each time; the card or its reader is faulty, use another");
    }
  }

  private String readHash(String name) throws IOException {
    try (InputStream in = card.read(name)) {
      return Hashes.of(in);
    }
  }

  private static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "permission denied";
    }
    String text = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return text.lines().findFirst().orElse("no reason given");
  }
}
