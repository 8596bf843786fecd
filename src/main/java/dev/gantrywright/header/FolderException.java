package dev.gantrywright.header;

/** A firmware folder that cannot be read; the message is one clear line for the user. */
public final class FolderException extends Exception {
  private static final long serialVersionUID = 1L;

  public FolderException(String message) {
    super(message);
  }

  public FolderException(String message, Throwable cause) {
    super(message, cause);
  }
}
