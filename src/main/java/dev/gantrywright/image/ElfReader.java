package dev.gantrywright.image;

import dev.gantrywright.image.BrokenImage.Reason;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;

/**
 * Reads executable 32-bit ELF files.
 *
 * <p>Source: System V Application Binary Interface (gABI), object files; checked against GNU
 * readelf, objdump, objcopy and size.
 */
final class ElfReader {
  static final int HEADER_BYTES = 52;
  static final int PROGRAM_HEADER_BYTES = 32;
  static final int SECTION_HEADER_BYTES = 40;
  static final int TYPE_OFFSET = 16;
  static final int MACHINE_OFFSET = 18;
  static final int ENTRY_OFFSET = 24;
  static final int PROGRAM_TABLE_OFFSET = 28;
  static final int ET_EXEC = 2;
  static final int PT_LOAD = 1;
  static final int CLASS_32 = 1;

  /** A linked controller program has a handful; each section is looked for in all of them. */
  private static final int MOST_LOADS = 1024;

  private static final int SHT_NULL = 0;
  private static final int SHT_NOBITS = 8;
  private static final int SHF_WRITE = 1;
  private static final int SHF_ALLOC = 2;
  private static final int SHF_EXECINSTR = 4;
  private static final String AGAIN = "Build the file again.";

  private record Load(long offset, long physical, long fileSize) {}

  private final byte[] file;
  private final ByteBuffer in;

  private ElfReader(byte[] file) {
    this.file = file;
    this.in = ByteBuffer.wrap(file);
  }

  static Image read(byte[] file) throws BrokenImage {
    return new ElfReader(file).readAll();
  }

  private Image readAll() throws BrokenImage {
    header();
    List<Load> loads = loads();
    List<ElfSection> sections = new ArrayList<>();
    ContentsBuilder memory = new ContentsBuilder();
    if (sections(loads, sections, memory) == 0) {
      for (Load l : loads) {
        memory.put(l.physical(), slice(l.offset(), l.fileSize(), "segment"), "segment");
      }
    }
    Contents contents = memory.build();
    if (contents.isEmpty()) {
      throw new BrokenImage(
          Reason.NOTHING_TO_LOAD, "ELF file", "holds no bytes to load", "Give the linked program.");
    }
    ElfMachine machine = new ElfMachine(in.getShort(MACHINE_OFFSET) & 0xFFFF);
    return Image.of(
        ImageFormat.ELF,
        contents,
        OptionalLong.of(u32(ENTRY_OFFSET)),
        new ImageDetails.Elf(machine, sections, MemoryUse.of(sections)),
        file);
  }

  private void header() throws BrokenImage {
    if (file.length < HEADER_BYTES) {
      throw new BrokenImage(
          Reason.TRUNCATED, "ELF header", "is cut off after " + file.length + " bytes", AGAIN);
    }
    if (file[4] != CLASS_32) {
      throw new BrokenImage(
          Reason.NOT_EXECUTABLE,
          "ELF header",
          "is not of the 32-bit class: this program is for a computer, not for a controller",
          "Give the file that the cross compiler linked.");
    }
    if (file[5] != 1 && file[5] != 2) {
      throw new BrokenImage(Reason.BAD_HEADER, "ELF header", "has no known byte order", AGAIN);
    }
    in.order(file[5] == 1 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    if (in.getShort(TYPE_OFFSET) != ET_EXEC) {
      throw new BrokenImage(
          Reason.NOT_EXECUTABLE,
          "ELF header",
          "says type " + in.getShort(TYPE_OFFSET) + ", not an executable (2)",
          "Give the linked program, not an object file.");
    }
  }

  private List<Load> loads() throws BrokenImage {
    long table = u32(PROGRAM_TABLE_OFFSET);
    int size = in.getShort(42) & 0xFFFF;
    int count = in.getShort(44) & 0xFFFF;
    tableFits(table, size, count, PROGRAM_HEADER_BYTES, "program header table");
    List<Load> out = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      if (out.size() > MOST_LOADS) {
        throw new BrokenImage(
            Reason.BAD_HEADER, "ELF file", "loads more than " + MOST_LOADS + " segments", AGAIN);
      }
      int at = (int) table + i * size;
      if (u32(at) != PT_LOAD || u32(at + 16) == 0) {
        continue;
      }
      Load load = new Load(u32(at + 4), u32(at + 12), u32(at + 16));
      inFile(load.offset(), load.fileSize(), "segment " + i);
      if (load.physical() + load.fileSize() > 0x1_0000_0000L) {
        throw new BrokenImage(
            Reason.ADDRESS_RANGE, "segment " + i, "runs past 32-bit addresses", AGAIN);
      }
      out.add(load);
    }
    return out;
  }

  /** Reads the section table; returns how many sections it holds (0: stripped of it). */
  private int sections(List<Load> loads, List<ElfSection> sections, ContentsBuilder memory)
      throws BrokenImage {
    long table = u32(32);
    int size = in.getShort(46) & 0xFFFF;
    int count = in.getShort(48) & 0xFFFF;
    int namesIndex = in.getShort(50) & 0xFFFF;
    tableFits(table, size, count, SECTION_HEADER_BYTES, "section header table");
    for (int i = 0; i < count; i++) {
      int at = (int) table + i * size;
      long type = u32(at + 4);
      long flags = u32(at + 8);
      long bytes = u32(at + 20);
      if (type == SHT_NULL || (flags & SHF_ALLOC) == 0 || bytes == 0) {
        continue;
      }
      String name = name(table, size, count, namesIndex, u32(at), i);
      boolean stored = type != SHT_NOBITS;
      long address = u32(at + 12);
      long offset = u32(at + 16);
      long loadAddress = stored ? loadAddress(loads, offset, bytes, address) : address;
      if (stored) {
        inFile(offset, bytes, "section " + name);
        memory.put(loadAddress, slice(offset, bytes, name), "section " + name);
      }
      if (loadAddress + bytes > 0x1_0000_0000L || address + bytes > 0x1_0000_0000L) {
        throw new BrokenImage(
            Reason.ADDRESS_RANGE, "section " + name, "runs past 32-bit addresses", AGAIN);
      }
      sections.add(
          new ElfSection(
              name,
              address,
              loadAddress,
              bytes,
              stored,
              (flags & SHF_WRITE) != 0,
              (flags & SHF_EXECINSTR) != 0));
    }
    return count;
  }

  /** Where the bytes are stored: the physical address of the segment that carries them. */
  private static long loadAddress(List<Load> loads, long offset, long bytes, long address) {
    for (Load l : loads) {
      if (offset >= l.offset() && offset + bytes <= l.offset() + l.fileSize()) {
        return l.physical() + (offset - l.offset());
      }
    }
    return address;
  }

  private String name(long table, int size, int count, int namesIndex, long offset, int index)
      throws BrokenImage {
    if (namesIndex >= count) {
      return "#" + index;
    }
    int at = (int) table + namesIndex * size;
    long from = u32(at + 16) + offset;
    int end = (int) Math.min(from, file.length);
    while (end < file.length && file[end] != 0 && end - from < 80) {
      end++;
    }
    inFile(from, 0, "name of section " + index);
    String text = new String(file, (int) from, end - (int) from, StandardCharsets.ISO_8859_1);
    return text.replaceAll("[^ -~]", "?");
  }

  private void tableFits(long at, int size, int count, int least, String what) throws BrokenImage {
    if (count == 0) {
      return;
    }
    if (size < least) {
      throw new BrokenImage(
          Reason.BAD_HEADER, what, "has entries of " + size + " bytes, below " + least, AGAIN);
    }
    inFile(at, (long) size * count, what);
  }

  private void inFile(long offset, long bytes, String what) throws BrokenImage {
    if (offset + bytes > file.length) {
      throw new BrokenImage(
          Reason.TRUNCATED,
          what,
          "needs bytes up to " + (offset + bytes) + " of a file of " + file.length,
          AGAIN);
    }
  }

  private byte[] slice(long offset, long bytes, String what) throws BrokenImage {
    inFile(offset, bytes, what);
    return java.util.Arrays.copyOfRange(file, (int) offset, (int) (offset + bytes));
  }

  private long u32(int at) {
    return in.getInt(at) & 0xFFFFFFFFL;
  }
}
