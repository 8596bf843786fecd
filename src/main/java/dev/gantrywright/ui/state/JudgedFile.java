package dev.gantrywright.ui.state;

import dev.gantrywright.app.ChosenImage;
import java.nio.file.Path;
import java.util.Optional;

/**
 * The image file that is to be loaded.
 *
 * @param file null where none is chosen
 * @param image the image as it was read and judged; empty while it is read, or where it cannot be
 * @param problem why it cannot be read; empty where it can
 */
public record JudgedFile(Path file, Optional<ChosenImage> image, String problem) {
  static JudgedFile none() {
    return new JudgedFile(null, Optional.empty(), "");
  }

  static JudgedFile reading(Path file) {
    return new JudgedFile(file, Optional.empty(), "");
  }

  /** Whether a reason must be given before it is loaded. */
  public boolean refused() {
    return image.filter(ChosenImage::refused).isPresent();
  }
}
