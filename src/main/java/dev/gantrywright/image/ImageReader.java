package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;

/** Reads a firmware image in any of the known formats, told apart by their bytes, not by name. */
public final class ImageReader {
  /** Above the largest text form of the largest flash of any controller here. */
  public static final int LARGEST_FILE = 64 << 20;

  private ImageReader() {}

  /**
   * Reads a file.
   *
   * @throws BrokenImage where the bytes are no whole image, with the reason
   * @throws IOException where the file cannot be read
   */
  public static Image read(Path file) throws IOException, BrokenImage {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST_FILE + 1);
      return read(bytes);
    }
  }

  /**
   * Reads bytes.
   *
   * @throws BrokenImage where they are no whole image, with the reason
   */
  public static Image read(byte[] file) throws BrokenImage {
    if (file.length == 0) {
      throw new BrokenImage(Reason.EMPTY, "file", "is empty", "Build again, or copy it again.");
    }
    if (file.length > LARGEST_FILE) {
      throw new BrokenImage(
          Reason.TOO_LARGE,
          "file",
          "is larger than 64 MiB, beyond any controller here",
          "Give the firmware image.");
    }
    return switch (formatOf(file)) {
      case ELF -> ElfReader.read(file);
      case UF2 -> Uf2Reader.read(file);
      case INTEL_HEX -> notEmpty(IntelHexReader.read(file));
      case S_RECORD -> notEmpty(SRecordReader.read(file));
      case RAW -> raw(file);
    };
  }

  /** The format that the first bytes show. */
  public static ImageFormat formatOf(byte[] file) {
    if (startsWith(file, 0x7F, 'E', 'L', 'F')) {
      return ImageFormat.ELF;
    }
    if (startsWith(file, 'U', 'F', '2', '\n')) {
      return ImageFormat.UF2;
    }
    int first = 0;
    while (first < file.length && first < 64 && file[first] <= ' ' && file[first] > 0) {
      first++;
    }
    if (first + 3 <= file.length && file[first] == ':' && twoDigits(file, first + 1)) {
      return ImageFormat.INTEL_HEX;
    }
    if (first + 4 <= file.length
        && file[first] == 'S'
        && file[first + 1] >= '0'
        && file[first + 1] <= '9'
        && twoDigits(file, first + 2)) {
      return ImageFormat.S_RECORD;
    }
    return ImageFormat.RAW;
  }

  private static Image raw(byte[] file) throws BrokenImage {
    ContentsBuilder memory = new ContentsBuilder();
    memory.put(0, file.clone(), "file");
    return Image.of(
        ImageFormat.RAW, memory.build(), OptionalLong.empty(), ImageDetails.none(), file);
  }

  private static Image notEmpty(Image image) throws BrokenImage {
    if (image.contents().isEmpty()) {
      throw new BrokenImage(
          Reason.NOTHING_TO_LOAD,
          image.format().words() + " file",
          "holds no data record",
          "Build again.");
    }
    return image;
  }

  private static boolean startsWith(byte[] file, int... magic) {
    if (file.length < magic.length) {
      return false;
    }
    for (int i = 0; i < magic.length; i++) {
      if (file[i] != (byte) magic[i]) {
        return false;
      }
    }
    return true;
  }

  private static boolean twoDigits(byte[] file, int at) {
    return Hex.digit(file[at]) >= 0 && Hex.digit(file[at + 1]) >= 0;
  }
}
