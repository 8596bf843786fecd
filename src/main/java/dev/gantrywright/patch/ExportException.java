package dev.gantrywright.patch;

/** The patched folder cannot be written; the message is the one line to show. */
public final class ExportException extends Exception {
  private static final long serialVersionUID = 1L;

  /** Whose fault it is. */
  public enum Kind {
    /** The place that was asked for is refused; nothing was written. */
    REFUSED,
    /** The file system failed; what was begun is taken away again. */
    FAILED,
    /** The user cancelled; what was begun is taken away again. */
    CANCELLED
  }

  private final Kind kind;

  ExportException(Kind kind, String line) {
    super(line);
    this.kind = kind;
  }

  ExportException(Kind kind, String line, Throwable cause) {
    super(line, cause);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }
}
