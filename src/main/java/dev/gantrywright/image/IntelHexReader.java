package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;
import java.util.OptionalLong;

/**
 * Reads Intel HEX.
 *
 * <p>Source: Intel, Hexadecimal Object File Format Specification, Revision A, 6 January 1988.
 */
final class IntelHexReader {
  private final ContentsBuilder memory = new ContentsBuilder();
  private OptionalLong entry = OptionalLong.empty();
  private long base;
  private boolean segmented;
  private boolean ended;

  static Image read(byte[] file) throws BrokenImage {
    return new IntelHexReader().readAll(file);
  }

  private Image readAll(byte[] file) throws BrokenImage {
    TextRecords lines = new TextRecords(file);
    while (lines.next()) {
      if (ended) {
        throw BrokenImage.afterEnd(lines.where(), "end-of-file record");
      }
      lines.expect(':', "Intel HEX");
      record(lines.octets(1), lines.where());
    }
    if (!ended) {
      throw BrokenImage.cutOff(lines.where(), "end-of-file record");
    }
    return Image.of(ImageFormat.INTEL_HEX, memory.build(), entry, ImageDetails.none(), file);
  }

  private void record(byte[] r, String where) throws BrokenImage {
    if (r.length < 5 || r.length != (r[0] & 0xFF) + 5) {
      throw new BrokenImage(
          Reason.BAD_LENGTH,
          where,
          "holds "
              + r.length
              + " bytes where its length byte asks for "
              + (r.length == 0 ? "at least 5" : (r[0] & 0xFF) + 5),
          BrokenImage.AGAIN);
    }
    int check = checksum(r, r.length - 1);
    if (check != (r[r.length - 1] & 0xFF)) {
      throw BrokenImage.checkByte(where, r[r.length - 1], check);
    }
    int offset = (r[1] & 0xFF) << 8 | (r[2] & 0xFF);
    HexRecordType type =
        HexRecordType.of(r[3] & 0xFF)
            .orElseThrow(
                () ->
                    new BrokenImage(
                        Reason.UNKNOWN_RECORD,
                        where,
                        "is of type " + (r[3] & 0xFF) + ", which Intel HEX lacks",
                        BrokenImage.AGAIN));
    if (type.carries() >= 0 && r.length - 5 != type.carries()) {
      throw new BrokenImage(
          Reason.BAD_LENGTH,
          where,
          "of type "
              + type.number()
              + " ("
              + type.words()
              + ") carries "
              + (r.length - 5)
              + " bytes where its type has "
              + type.carries(),
          BrokenImage.AGAIN);
    }
    take(type, offset, r, where);
  }

  private void take(HexRecordType type, int offset, byte[] r, String where) throws BrokenImage {
    switch (type) {
      case DATA -> data(offset, r, where);
      case END_OF_FILE -> ended = true;
      case EXTENDED_SEGMENT_ADDRESS -> {
        base = big(r, 2) << 4;
        segmented = true;
      }
      case START_SEGMENT_ADDRESS -> {
        long segmentAndPointer = big(r, 4);
        entry = OptionalLong.of(((segmentAndPointer >>> 16) << 4) + (segmentAndPointer & 0xFFFF));
      }
      case EXTENDED_LINEAR_ADDRESS -> {
        base = big(r, 2) << 16;
        segmented = false;
      }
      case START_LINEAR_ADDRESS -> entry = OptionalLong.of(big(r, 4));
    }
  }

  private void data(int offset, byte[] r, String where) throws BrokenImage {
    int count = r.length - 5;
    byte[] bytes = new byte[count];
    System.arraycopy(r, 4, bytes, 0, count);
    // A segment is 64 KiB and wraps inside itself; a linear block runs on, but not past 4 GiB.
    int room = segmented ? 0x10000 - offset : count;
    if (segmented && count > room) {
      byte[] head = java.util.Arrays.copyOf(bytes, room);
      memory.put(base + offset, head, where);
      memory.put(base, java.util.Arrays.copyOfRange(bytes, room, count), where);
      return;
    }
    if (base + offset + count > 0x1_0000_0000L) {
      throw BrokenImage.beyondAddresses(where);
    }
    memory.put(base + offset, bytes, where);
  }

  private static long big(byte[] r, int count) {
    long value = 0;
    for (int i = 0; i < count; i++) {
      value = value << 8 | (r[4 + i] & 0xFF);
    }
    return value;
  }

  /** Two's complement of the sum of the first {@code count} bytes, 0 to 255. */
  static int checksum(byte[] record, int count) {
    int sum = 0;
    for (int i = 0; i < count; i++) {
      sum += record[i];
    }
    return -sum & 0xFF;
  }
}
