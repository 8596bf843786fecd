package dev.gantrywright.header;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Why the file system refused, in a few words; Java's own message is often the path alone. */
public final class IoReason {
  private IoReason() {}

  /** The words, to stand in brackets behind what could not be done. */
  public static String of(IOException failed) {
    if (failed instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (failed instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failed instanceof CharacterCodingException) {
      return "it is no UTF-8 text";
    }
    if (failed instanceof FileSystemException at && at.getReason() != null) {
      return at.getReason();
    }
    return failed.getMessage() == null ? failed.getClass().getSimpleName() : failed.getMessage();
  }
}
