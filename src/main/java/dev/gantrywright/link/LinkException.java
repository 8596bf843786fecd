package dev.gantrywright.link;

/**
 * Something about the line itself went wrong. The message is one clear line: what, where, what to
 * try.
 */
public final class LinkException extends Exception {
  private static final long serialVersionUID = 1L;

  /** What happened, for code that decides whether to try again. */
  public enum Kind {
    /** The text does not name a line. */
    BAD_ADDRESS,
    /** There is no such port or host. */
    NOT_FOUND,
    /** Another program or client holds the line. */
    BUSY,
    /** The system does not let this user open it. */
    NOT_ALLOWED,
    /** It was open and is no longer there. */
    LOST,
    /** We closed it ourselves. */
    CLOSED,
    /** Open, but nothing sensible comes back. */
    SILENT
  }

  private final Kind kind;

  public LinkException(Kind kind, String message) {
    super(message);
    this.kind = kind;
  }

  public LinkException(Kind kind, String message, Throwable cause) {
    super(message, cause);
    this.kind = kind;
  }

  public Kind kind() {
    return kind;
  }

  /** The line was open and has gone: unplugged, powered off, or the far end hung up. */
  public static LinkException lost(String name) {
    return new LinkException(
        Kind.LOST, name + " has gone: look at cable and power, then list the ports again");
  }

  /** The line was closed on this side. */
  public static LinkException closed(String name) {
    return new LinkException(Kind.CLOSED, name + " is closed");
  }
}
