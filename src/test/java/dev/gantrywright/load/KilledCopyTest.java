package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills copies with SIGKILL at random moments: under the image's name there is never anything but a
 * whole image, and what is kept is whole too. {@code -Dload.kills=200} runs the full count.
 */
class KilledCopyTest {
  private static final int KILLS = Integer.getInteger("load.kills", 6);

  @TempDir Path folder;

  @Test
  void neverAHalfFileUnderTheName() throws Exception {
    Path card = Files.createDirectory(folder.resolve("card"));
    Random random = new Random(11);
    byte[] one = new byte[3_000_000];
    byte[] two = new byte[2_000_001];
    random.nextBytes(one);
    random.nextBytes(two);
    Path fileOne = Files.write(folder.resolve("one"), one);
    Path fileTwo = Files.write(folder.resolve("two"), two);
    int working = 0;
    int whole = 0;
    for (int i = 0; i < KILLS; i++) {
      Process process = start(card, fileOne, fileTwo);
      // After one to three whole copies, at a random moment of the next two.
      long before = System.nanoTime();
      long copyNanos = 0;
      for (int copies = 1 + random.nextInt(3); copies > 0; copies--) {
        assertThat(process.getInputStream().read()).isEqualTo('.');
        copyNanos = System.nanoTime() - before;
        before = System.nanoTime();
      }
      TimeUnit.NANOSECONDS.sleep((long) (2 * copyNanos * random.nextDouble()));
      process.destroyForcibly().waitFor();
      if (Files.exists(card.resolve("FULMAR.IMG"))) {
        byte[] found = Files.readAllBytes(card.resolve("FULMAR.IMG"));
        assertThat(Arrays.equals(found, one) || Arrays.equals(found, two))
            .as("after kill %d the file of %d bytes is whole", i, found.length)
            .isTrue();
        whole++;
      }
      working += Files.exists(card.resolve(VerifiedCopy.WORKING_NAME)) ? 1 : 0;
      keptAreWhole(one, two);
    }
    System.out.println(
        KILLS
            + " kills: "
            + whole
            + " times a whole image, "
            + working
            + " times a working file left, never half an image under its name");
  }

  private void keptAreWhole(byte[] one, byte[] two) throws IOException {
    if (!Files.isDirectory(folder.resolve("kept"))) {
      return;
    }
    try (Stream<Path> files = Files.list(folder.resolve("kept"))) {
      for (Path f : files.filter(p -> !p.getFileName().toString().startsWith(".")).toList()) {
        byte[] found = Files.readAllBytes(f);
        assertThat(Arrays.equals(found, one) || Arrays.equals(found, two)).isTrue();
      }
    }
  }

  private Process start(Path card, Path one, Path two) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xshare:auto",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            CopyInALoop.class.getName(),
            card.toString(),
            folder.resolve("kept").toString(),
            one.toString(),
            two.toString())
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }
}
