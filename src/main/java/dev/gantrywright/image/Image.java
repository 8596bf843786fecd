package dev.gantrywright.image;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.OptionalLong;

/**
 * A firmware image as read from a file.
 *
 * @param format the file format
 * @param contents the bytes by address; a raw binary starts at 0 until {@link #at} gives its place
 * @param placed whether the addresses are known (false: a raw binary not yet given its place)
 * @param entry where the file says that the program starts
 * @param details what only this format knows
 * @param sha256 of the whole file, 64 lower-case hexadecimal digits
 * @param fileBytes size of the file
 */
public record Image(
    ImageFormat format,
    Contents contents,
    boolean placed,
    OptionalLong entry,
    ImageDetails details,
    String sha256,
    long fileBytes) {

  static Image of(
      ImageFormat format,
      Contents contents,
      OptionalLong entry,
      ImageDetails details,
      byte[] file) {
    return new Image(format, contents, format.addressed(), entry, details, hash(file), file.length);
  }

  /** A raw binary put at an address; images that know their place stay as they are. */
  public Image at(long address) {
    return placed
        ? this
        : new Image(
            format,
            contents.moved(address - contents.span().start()),
            true,
            entry,
            details,
            sha256,
            fileBytes);
  }

  /** What it looks like from its first words, in words. */
  public String guess() {
    return Guess.of(this);
  }

  /** The same file with other contents: what one family of a UF2 file gets. */
  Image with(Contents other) {
    return new Image(format, other, placed, entry, details, sha256, fileBytes);
  }

  private static String hash(byte[] file) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(file));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
