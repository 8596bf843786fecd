package dev.gantrywright.load;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Looks at drive and name before anything is written. */
public final class CardCheck {
  /** Above it, cards come from the shop with exFAT; source: SD Association, SDXC. */
  static final long SDHC_MOST_BYTES = 32L << 30;

  private CardCheck() {}

  /**
   * What speaks against this drive and name.
   *
   * @param looksFor the name that the board sheet says; empty where it says none
   */
  public static List<LoadRemark> look(
      Drive drive, String name, Optional<String> looksFor, long imageBytes) {
    List<LoadRemark> out = new ArrayList<>();
    if (drive.readOnly()) {
      out.add(
          new LoadRemark(
              true,
              "card-read-only",
              drive.root() + " cannot be written.",
              "Slide the card's lock away from LOCK and put it in again."));
    }
    if (!drive.fat()) {
      out.add(
          new LoadRemark(
              drive.removable(),
              "card-not-fat",
              drive.root()
                  + " is formatted as "
                  + drive.fileSystem()
                  + "; most loaders read FAT only.",
              "Use a card of up to 32 GB, formatted as FAT32."));
    } else if (drive.totalBytes() > SDHC_MOST_BYTES) {
      out.add(
          new LoadRemark(
              false,
              "card-large",
              drive.root() + " is larger than 32 GB.",
              "Some loaders do not start on such cards; a small one is the safe choice."));
    }
    if (!drive.removable()) {
      out.add(
          new LoadRemark(
              false,
              "not-removable",
              drive.root() + " does not look like a card or stick.",
              "Check that this is the place you mean."));
    }
    if (drive.freeBytes() > 0 && drive.freeBytes() < imageBytes + VerifiedCopy.SLACK_BYTES) {
      out.add(
          new LoadRemark(
              true,
              "card-full",
              String.format(
                  java.util.Locale.ROOT,
                  "%s has %,d bytes free, the image needs %,d.",
                  drive.root(),
                  drive.freeBytes(),
                  imageBytes + VerifiedCopy.SLACK_BYTES),
              "Make room on the card."));
    }
    out.addAll(name(name, looksFor));
    return out;
  }

  /** What speaks against the name alone. */
  public static List<LoadRemark> name(String name, Optional<String> looksFor) {
    List<LoadRemark> out = new ArrayList<>();
    Optional<String> fault = ShortName.fault(name);
    if (fault.isPresent()) {
      out.add(
          new LoadRemark(
              false,
              "name-not-short",
              name + " is no 8.3 name: " + fault.get() + ".",
              "Simple loaders read 8.3 names only; give one with --as."));
    }
    if (looksFor.isPresent() && !looksFor.get().equalsIgnoreCase(name)) {
      out.add(
          new LoadRemark(
              true,
              "name-not-looked-for",
              "The loader looks for " + looksFor.get() + ", not for " + name + ".",
              "Copy it under that name."));
    }
    return out;
  }
}
