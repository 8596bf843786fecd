package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;
import java.util.Arrays;
import java.util.OptionalLong;

/**
 * Reads Motorola S-records.
 *
 * <p>Source: Motorola M68000 Family Programmer's Reference Manual, appendix C (memory); checked
 * byte for byte against GNU objcopy.
 */
final class SRecordReader {
  private final ContentsBuilder memory = new ContentsBuilder();
  private OptionalLong entry = OptionalLong.empty();
  private long dataRecords;
  private boolean ended;

  static Image read(byte[] file) throws BrokenImage {
    return new SRecordReader().readAll(file);
  }

  private Image readAll(byte[] file) throws BrokenImage {
    TextRecords lines = new TextRecords(file);
    while (lines.next()) {
      if (ended) {
        throw BrokenImage.afterEnd(lines.where(), "closing record");
      }
      lines.expect('S', "an S-record");
      record(lines.at(1) - '0', lines.octets(2), lines.where());
    }
    if (!ended) {
      throw BrokenImage.cutOff(lines.where(), "closing record (S7, S8 or S9)");
    }
    return Image.of(ImageFormat.S_RECORD, memory.build(), entry, ImageDetails.none(), file);
  }

  private void record(int type, byte[] r, String where) throws BrokenImage {
    if (type < 0 || type > 9 || type == 4) {
      throw new BrokenImage(
          Reason.UNKNOWN_RECORD, where, "is of a type that S-records lack", BrokenImage.AGAIN);
    }
    int width = addressBytes(type);
    if (r.length == 0 || r.length != (r[0] & 0xFF) + 1 || r.length < width + 2) {
      throw new BrokenImage(
          Reason.BAD_LENGTH,
          where,
          "holds "
              + Math.max(0, r.length - 1)
              + " bytes where its count byte asks for "
              + (r.length == 0 ? "at least " + (width + 1) : Math.max(r[0] & 0xFF, width + 1)),
          BrokenImage.AGAIN);
    }
    int check = checksum(r, r.length - 1);
    if (check != (r[r.length - 1] & 0xFF)) {
      throw BrokenImage.checkByte(where, r[r.length - 1], check);
    }
    long address = 0;
    for (int i = 0; i < width; i++) {
      address = address << 8 | (r[1 + i] & 0xFF);
    }
    take(type, address, Arrays.copyOfRange(r, 1 + width, r.length - 1), where);
  }

  private void take(int type, long address, byte[] bytes, String where) throws BrokenImage {
    switch (type) {
      case 1, 2, 3 -> {
        if (address + bytes.length > 0x1_0000_0000L) {
          throw BrokenImage.beyondAddresses(where);
        }
        memory.put(address, bytes, where);
        dataRecords++;
      }
      case 5, 6 -> {
        if (address != dataRecords) {
          throw new BrokenImage(
              Reason.BAD_COUNT,
              where,
              "counts " + address + " data records where " + dataRecords + " came before it",
              BrokenImage.AGAIN);
        }
      }
      case 7, 8, 9 -> {
        entry = OptionalLong.of(address);
        ended = true;
      }
      default -> {
        // S0: a title, nothing to load.
      }
    }
  }

  private static int addressBytes(int type) {
    return switch (type) {
      case 2, 6, 8 -> 3;
      case 3, 7 -> 4;
      default -> 2;
    };
  }

  /** Ones' complement of the sum of the first {@code count} bytes, 0 to 255. */
  static int checksum(byte[] record, int count) {
    int sum = 0;
    for (int i = 0; i < count; i++) {
      sum += record[i];
    }
    return ~sum & 0xFF;
  }
}
