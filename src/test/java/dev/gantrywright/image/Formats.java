package dev.gantrywright.image;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/** Writers of the text and block formats, for tests to read back. */
final class Formats {
  private Formats() {}

  static byte[] hex(long address, byte[] data, int perRecord) {
    StringBuilder out = new StringBuilder();
    long upper = -1;
    for (int i = 0; i < data.length; ) {
      long at = address + i;
      if (at >>> 16 != upper) {
        upper = at >>> 16;
        hexRecord(out, 4, 0, new byte[] {(byte) (upper >> 8), (byte) upper});
      }
      int room = (int) Math.min(perRecord, 0x10000 - (at & 0xFFFF));
      int n = Math.min(room, data.length - i);
      hexRecord(out, 0, (int) (at & 0xFFFF), Arrays.copyOfRange(data, i, i + n));
      i += n;
    }
    hexRecord(out, 1, 0, new byte[0]);
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  static void hexRecord(StringBuilder out, int type, int offset, byte[] data) {
    int sum = data.length + (offset >> 8) + (offset & 0xFF) + type;
    out.append(String.format(Locale.ROOT, ":%02X%04X%02X", data.length, offset, type));
    for (byte b : data) {
      sum += b & 0xFF;
      out.append(String.format(Locale.ROOT, "%02X", b & 0xFF));
    }
    out.append(String.format(Locale.ROOT, "%02X\n", -sum & 0xFF));
  }

  static byte[] srec(long address, byte[] data, int perRecord) {
    StringBuilder out = new StringBuilder();
    srecRecord(out, 0, 0, "title".getBytes(StandardCharsets.US_ASCII));
    int records = 0;
    for (int i = 0; i < data.length; i += perRecord) {
      int n = Math.min(perRecord, data.length - i);
      srecRecord(out, 3, address + i, Arrays.copyOfRange(data, i, i + n));
      records++;
    }
    if (records <= 0xFFFF) {
      srecRecord(out, 5, records, new byte[0]);
    }
    srecRecord(out, 7, address, new byte[0]);
    return out.toString().getBytes(StandardCharsets.US_ASCII);
  }

  static void srecRecord(StringBuilder out, int type, long address, byte[] data) {
    int width = type == 3 || type == 7 ? 4 : type == 2 || type == 6 || type == 8 ? 3 : 2;
    int count = width + data.length + 1;
    StringBuilder body = new StringBuilder(String.format(Locale.ROOT, "%02X", count));
    int sum = count;
    for (int i = width - 1; i >= 0; i--) {
      int b = (int) (address >> (8 * i)) & 0xFF;
      sum += b;
      body.append(String.format(Locale.ROOT, "%02X", b));
    }
    for (byte b : data) {
      sum += b & 0xFF;
      body.append(String.format(Locale.ROOT, "%02X", b & 0xFF));
    }
    out.append('S').append(type).append(body);
    out.append(String.format(Locale.ROOT, "%02X\n", ~sum & 0xFF));
  }

  static byte[] uf2(long address, byte[] data, int payload, long family) {
    int blocks = (data.length + payload - 1) / payload;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < blocks; i++) {
      int n = Math.min(payload, data.length - i * payload);
      byte[] part = Arrays.copyOfRange(data, i * payload, i * payload + n);
      long flags = family == 0 ? 0 : 0x2000;
      out.writeBytes(uf2Block(flags, address + (long) i * payload, part, i, blocks, family));
    }
    return out.toByteArray();
  }

  static byte[] uf2Block(
      long flags, long address, byte[] payload, long number, long count, long family) {
    ByteBuffer b = ByteBuffer.allocate(512).order(ByteOrder.LITTLE_ENDIAN);
    b.putInt(0x0A324655).putInt(0x9E5D5157).putInt((int) flags).putInt((int) address);
    b.putInt(payload.length).putInt((int) number).putInt((int) count).putInt((int) family);
    b.put(payload);
    while (b.position() < 508) {
      b.put((byte) 0xFF);
    }
    b.putInt(0x0AB16F30);
    return b.array();
  }
}
