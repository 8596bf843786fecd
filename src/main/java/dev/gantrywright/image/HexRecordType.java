package dev.gantrywright.image;

import java.util.Optional;

/**
 * The record types of Intel HEX.
 *
 * <p>Source: Intel, Hexadecimal Object File Format Specification, Revision A, 6 January 1988.
 */
enum HexRecordType {
  DATA(0, "data", -1),
  END_OF_FILE(1, "end of file", 0),
  EXTENDED_SEGMENT_ADDRESS(2, "extended segment address", 2),
  START_SEGMENT_ADDRESS(3, "start segment address", 4),
  EXTENDED_LINEAR_ADDRESS(4, "extended linear address", 2),
  START_LINEAR_ADDRESS(5, "start linear address", 4);

  private final int number;
  private final String words;
  private final int carries;

  HexRecordType(int number, String words, int carries) {
    this.number = number;
    this.words = words;
    this.carries = carries;
  }

  static Optional<HexRecordType> of(int number) {
    return number < values().length ? Optional.of(values()[number]) : Optional.empty();
  }

  int number() {
    return number;
  }

  /** As the specification calls it. */
  String words() {
    return words;
  }

  /** Bytes that such a record carries; -1 where that is open. */
  int carries() {
    return carries;
  }
}
