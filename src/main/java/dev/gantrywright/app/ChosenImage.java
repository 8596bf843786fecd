package dev.gantrywright.app;

import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageBytes;
import dev.gantrywright.image.ImageReader;
import dev.gantrywright.image.Verdict;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * An image that somebody chose to load, judged: the bytes held here are those that were judged, so
 * a file that changes on the way cannot slip past.
 *
 * @param verdict empty where the controller is not known
 */
public record ChosenImage(Path file, byte[] bytes, Image image, Optional<Verdict> verdict) {
  /**
   * Reads and judges.
   *
   * @param patched the printer's patched folder; an image inside it is held against its sources
   * @throws IOException with one line, where the file cannot be read or is no whole image
   */
  public static ChosenImage of(OpenPrinter printer, Path file, Path patched, Path records)
      throws IOException {
    byte[] bytes = ImageBytes.of(file);
    Image image;
    try {
      image = ImageReader.read(bytes);
    } catch (BrokenImage broken) {
      throw new IOException(file + ": " + broken.getMessage(), broken);
    }
    boolean built =
        patched != null
            && printer.folder() != null
            && file.toAbsolutePath().normalize().startsWith(patched.toAbsolutePath().normalize());
    List<Path> sources = built ? PatchedFiles.of(printer, patched) : List.of();
    return new ChosenImage(
        file, bytes, image, BuiltImageJudge.judge(printer, image, file, sources, records));
  }

  /** Whether an error stands against loading it. */
  public boolean refused() {
    return verdict.filter(Verdict::refused).isPresent();
  }
}
