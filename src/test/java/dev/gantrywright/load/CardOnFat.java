package dev.gantrywright.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A freshly formatted FAT card for tests of other packages. */
public record CardOnFat(Card card) {
  public static CardOnFat formatted(Path folder, int kibibytes) throws IOException {
    Path own = Files.createTempDirectory(folder, "card");
    return new CardOnFat(MtoolsCard.formatted(own, kibibytes, 12));
  }
}
