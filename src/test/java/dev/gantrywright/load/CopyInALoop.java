package dev.gantrywright.load;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;

/**
 * Copies two images in turn, a dot for each copy, for ever: a process to be killed. Arguments:
 * card, kept, one, two.
 */
public final class CopyInALoop {
  private CopyInALoop() {}

  public static void main(String[] args) throws Exception {
    byte[][] images = {Files.readAllBytes(Path.of(args[2])), Files.readAllBytes(Path.of(args[3]))};
    VerifiedCopy copy =
        new VerifiedCopy(
            new FolderCard(Path.of(args[0])),
            new KeptImages(Path.of(args[1]), Clock.systemUTC()),
            Clock.systemUTC(),
            s -> {});
    for (int i = 0; ; i++) {
      copy.copy(images[i % 2], "FULMAR.IMG");
      System.out.write('.');
      System.out.flush();
    }
  }
}
