package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * One block of a UF2 file.
 *
 * <p>Source: USB Flashing Format (UF2) specification, github.com/microsoft/uf2, file format.
 */
record Uf2Block(
    long flags, long address, int payloadBytes, long number, long count, long family, byte[] data) {
  static final int BYTES = 512;
  static final int HEADER_BYTES = 32;
  static final int DATA_BYTES = 476;
  static final int USUAL_PAYLOAD = 256;
  static final int ADDRESS_OFFSET = 12;
  static final int PAYLOAD_OFFSET = 16;
  static final int NUMBER_OFFSET = 20;
  static final int COUNT_OFFSET = 24;
  static final int FAMILY_OFFSET = 28;
  static final int END_MAGIC_OFFSET = 508;
  static final long MAGIC_0 = 0x0A324655L;
  static final long MAGIC_1 = 0x9E5D5157L;
  static final long MAGIC_END = 0x0AB16F30L;
  static final long NOT_MAIN_FLASH = 0x00000001L;
  static final long FILE_CONTAINER = 0x00001000L;
  static final long FAMILY_PRESENT = 0x00002000L;
  static final long MD5_PRESENT = 0x00004000L;
  static final long TAGS_PRESENT = 0x00008000L;

  static Uf2Block read(byte[] file, int index) throws BrokenImage {
    String where = "UF2 block " + index;
    ByteBuffer in =
        ByteBuffer.wrap(file, index * BYTES, BYTES).slice().order(ByteOrder.LITTLE_ENDIAN);
    if (u32(in, 0) != MAGIC_0 || u32(in, 4) != MAGIC_1 || u32(in, END_MAGIC_OFFSET) != MAGIC_END) {
      throw new BrokenImage(
          Reason.BAD_MAGIC,
          where,
          "lacks its magic numbers",
          "Build or copy the file again; the loader would skip this block.");
    }
    long payload = u32(in, PAYLOAD_OFFSET);
    long address = u32(in, ADDRESS_OFFSET);
    if (payload > DATA_BYTES || payload == 0) {
      throw new BrokenImage(
          Reason.BAD_PAYLOAD,
          where,
          "says it carries " + payload + " bytes; a block carries 1 to " + DATA_BYTES,
          "Convert the file again.");
    }
    if (address + payload > 0x1_0000_0000L) {
      throw new BrokenImage(
          Reason.ADDRESS_RANGE, where, "runs past 32-bit addresses", "Convert the file again.");
    }
    long flags = u32(in, 8);
    return new Uf2Block(
        flags,
        address,
        (int) payload,
        u32(in, NUMBER_OFFSET),
        u32(in, COUNT_OFFSET),
        (flags & FAMILY_PRESENT) != 0 ? u32(in, FAMILY_OFFSET) : 0,
        Arrays.copyOfRange(
            file, index * BYTES + HEADER_BYTES, index * BYTES + HEADER_BYTES + DATA_BYTES));
  }

  boolean has(long flag) {
    return (flags & flag) != 0;
  }

  byte[] payload() {
    return Arrays.copyOf(data, payloadBytes);
  }

  /** Blocks that an image of {@code size} bytes takes. */
  static long blocksFor(long size, int payload) {
    return (size + payload - 1) / payload;
  }

  private static long u32(ByteBuffer in, int at) {
    return in.getInt(at) & 0xFFFFFFFFL;
  }
}
