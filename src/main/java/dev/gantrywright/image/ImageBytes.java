package dev.gantrywright.image;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The bytes of an image file. */
public final class ImageBytes {
  private ImageBytes() {}

  /**
   * Reads at most one byte more than the largest image, so that {@link ImageReader} refuses what is
   * larger.
   *
   * @throws IOException with one line that names the file, the trouble and what to do
   */
  public static byte[] of(Path file) throws IOException {
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
    } catch (AccessDeniedException locked) {
      throw new IOException(file + ": may not be read; check its permissions", locked);
    } catch (IOException unreadable) {
      throw new IOException(file + ": cannot be read: " + unreadable.getMessage(), unreadable);
    }
  }
}
