package dev.gantrywright.app;

import dev.gantrywright.image.BrokenImage;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageReader;
import dev.gantrywright.image.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
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
    byte[] bytes = bytes(file);
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

  private static byte[] bytes(Path file) throws IOException {
    if (Files.isDirectory(file)) {
      throw new IOException(file + ": is a folder; give the image file in it");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw new IOException(file + ": is a pipe or a device; give the image file");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return in.readNBytes(ImageReader.LARGEST_FILE + 1);
    } catch (NoSuchFileException missing) {
      throw new IOException(file + ": no such file; build it, or choose another", missing);
    } catch (IOException unreadable) {
      throw new IOException(file + ": cannot be read: " + unreadable.getMessage(), unreadable);
    }
  }

  /** Whether an error stands against loading it. */
  public boolean refused() {
    return verdict.filter(Verdict::refused).isPresent();
  }
}
