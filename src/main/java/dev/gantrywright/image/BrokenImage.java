package dev.gantrywright.image;

/** A file that cannot be read as a firmware image. The message is one clear line. */
public final class BrokenImage extends Exception {
  /** What to do where bytes were lost or changed on the way. */
  static final String AGAIN = "Build or copy the file again.";

  private static final long serialVersionUID = 1L;

  /** Why the file was refused. */
  public enum Reason {
    /** No bytes at all. */
    EMPTY,
    /** Far larger than any controller's memory. */
    TOO_LARGE,
    /** A text record with a character that is no hexadecimal digit, or not starting as one does. */
    BAD_CHARACTER,
    /** A record that is longer or shorter than its own length says. */
    BAD_LENGTH,
    /** A record whose check byte is wrong. */
    BAD_CHECKSUM,
    /** A record of a type that the format does not know. */
    UNKNOWN_RECORD,
    /** The closing record is missing: the file was cut off. */
    NO_END,
    /** Records after the closing one. */
    AFTER_END,
    /** A count that does not match what is there. */
    BAD_COUNT,
    /** Two parts give one address different bytes. */
    OVERLAP,
    /** An address beyond 32 bits. */
    ADDRESS_RANGE,
    /** A header that contradicts itself. */
    BAD_HEADER,
    /** The file ends inside a part that it announces. */
    TRUNCATED,
    /** An ELF file that is not an executable 32-bit one. */
    NOT_EXECUTABLE,
    /** Nothing to load. */
    NOTHING_TO_LOAD,
    /** A UF2 block without its magic numbers. */
    BAD_MAGIC,
    /** A UF2 block that is missing or there twice. */
    BLOCK_SEQUENCE,
    /** A UF2 block that says it carries more than it can. */
    BAD_PAYLOAD
  }

  private final Reason reason;
  private final String where;

  BrokenImage(Reason reason, String where, String what, String todo) {
    super(where + " " + what + ". " + todo);
    this.reason = reason;
    this.where = where;
  }

  /** A record behind the closing one, which is named by the words. */
  static BrokenImage afterEnd(String where, String closing) {
    return new BrokenImage(Reason.AFTER_END, where, "stands after the " + closing, AGAIN);
  }

  /** The last record there is, with no closing one behind it. */
  static BrokenImage cutOff(String where, String closing) {
    return new BrokenImage(
        Reason.NO_END,
        where,
        "is the last one, and no " + closing + " follows: the file is cut off",
        AGAIN);
  }

  static BrokenImage checkByte(String where, byte seen, int given) {
    return new BrokenImage(
        Reason.BAD_CHECKSUM,
        where,
        "has check byte " + Hex.octet(seen) + " where its bytes give " + Hex.octet(given),
        AGAIN);
  }

  static BrokenImage beyondAddresses(String where) {
    return new BrokenImage(Reason.ADDRESS_RANGE, where, "runs past 32-bit addresses", AGAIN);
  }

  public Reason reason() {
    return reason;
  }

  /** The record, block or header that is wrong. */
  public String where() {
    return where;
  }
}
