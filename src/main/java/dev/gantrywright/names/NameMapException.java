package dev.gantrywright.names;

/** A name map cannot be read or written; the message is the one line to show. */
public final class NameMapException extends Exception {
  private static final long serialVersionUID = 1L;

  public NameMapException(String line, Throwable cause) {
    super(line, cause);
  }
}
