package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 of bytes and streams, as 64 lower-case hexadecimal digits. */
public final class Hashes {
  private Hashes() {}

  public static String of(byte[] bytes) {
    return HexFormat.of().formatHex(digest().digest(bytes));
  }

  static String of(InputStream in) throws IOException {
    MessageDigest digest = digest();
    byte[] buffer = new byte[65536];
    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
      digest.update(buffer, 0, n);
    }
    return HexFormat.of().formatHex(digest.digest());
  }

  private static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
