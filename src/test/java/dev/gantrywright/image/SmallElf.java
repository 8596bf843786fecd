package dev.gantrywright.image;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The smallest executables that the reader takes, for tests to break. */
final class SmallElf {
  private SmallElf() {}

  /** One segment of 64 bytes for ARM at 0x08000000, no section table. */
  static byte[] arm() {
    return of(ElfMachine.ARM, 0x08000000L, new byte[64], 0x08000000L);
  }

  static byte[] of(int machine, long address, byte[] program, long entry) {
    ByteBuffer b = ByteBuffer.allocate(84 + program.length).order(ByteOrder.LITTLE_ENDIAN);
    b.put(new byte[] {0x7F, 'E', 'L', 'F', 1, 1, 1});
    b.putShort(16, (short) 2).putShort(18, (short) machine).putInt(20, 1);
    b.putInt(24, (int) entry).putInt(28, 52);
    b.putShort(40, (short) 52).putShort(42, (short) 32).putShort(44, (short) 1);
    b.putShort(46, (short) 40);
    b.putInt(52, 1).putInt(56, 84).putInt(60, (int) address).putInt(64, (int) address);
    b.putInt(68, program.length).putInt(72, program.length).putInt(76, 5).putInt(80, 4);
    b.position(84).put(program);
    return b.array();
  }
}
