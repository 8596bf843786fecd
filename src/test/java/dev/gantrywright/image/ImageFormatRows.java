package dev.gantrywright.image;

import dev.gantrywright.reference.GroupRows;
import dev.gantrywright.reference.HandbookRow;
import dev.gantrywright.reference.Use;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.OptionalLong;

/** Group 4: image formats, by the readers' own arithmetic and constants. */
public final class ImageFormatRows extends GroupRows {
  private static final String END = ":00000001FF";

  private static final Map<String, Long> CONSTANTS =
      Map.ofEntries(
          Map.entry("UF2 magic word 0", Uf2Block.MAGIC_0),
          Map.entry("UF2 magic word 1", Uf2Block.MAGIC_1),
          Map.entry("UF2 final magic", Uf2Block.MAGIC_END),
          Map.entry("UF2 flag not-main-flash", Uf2Block.NOT_MAIN_FLASH),
          Map.entry("UF2 flag file-container", Uf2Block.FILE_CONTAINER),
          Map.entry("UF2 flag family-id-present", Uf2Block.FAMILY_PRESENT),
          Map.entry("UF2 flag md5-present", Uf2Block.MD5_PRESENT),
          Map.entry("UF2 flag extension-tags-present", Uf2Block.TAGS_PRESENT),
          Map.entry("UF2 block size", (long) Uf2Block.BYTES),
          Map.entry("UF2 header size", (long) Uf2Block.HEADER_BYTES),
          Map.entry("UF2 largest payload", (long) Uf2Block.DATA_BYTES),
          Map.entry("UF2 payload most tools use", (long) Uf2Block.USUAL_PAYLOAD),
          Map.entry("UF2 offset of target address", (long) Uf2Block.ADDRESS_OFFSET),
          Map.entry("UF2 offset of payload size", (long) Uf2Block.PAYLOAD_OFFSET),
          Map.entry("UF2 offset of block number", (long) Uf2Block.NUMBER_OFFSET),
          Map.entry("UF2 offset of block count", (long) Uf2Block.COUNT_OFFSET),
          Map.entry("UF2 offset of family id", (long) Uf2Block.FAMILY_OFFSET),
          Map.entry("UF2 offset of final magic", (long) Uf2Block.END_MAGIC_OFFSET),
          Map.entry("RP2040 boot2 largest code", (long) SecondStageCheck.CODE_BYTES),
          Map.entry("ELF32 e_ident length", (long) ElfReader.TYPE_OFFSET),
          Map.entry("ELF32 e_type offset", (long) ElfReader.TYPE_OFFSET),
          Map.entry("ELF32 e_machine offset", (long) ElfReader.MACHINE_OFFSET),
          Map.entry("ELF32 e_entry offset", (long) ElfReader.ENTRY_OFFSET),
          Map.entry("ELF32 e_phoff offset", (long) ElfReader.PROGRAM_TABLE_OFFSET),
          Map.entry("ELF32 ELF32 header size", (long) ElfReader.HEADER_BYTES),
          Map.entry("ELF32 ELF32 program header size", (long) ElfReader.PROGRAM_HEADER_BYTES),
          Map.entry("ELF32 ELF32 section header size", (long) ElfReader.SECTION_HEADER_BYTES));

  private static final Map<String, Integer> ELF =
      Map.of(
          "EM_ARM", ElfMachine.ARM,
          "EM_AVR", ElfMachine.AVR,
          "EM_XTENSA", ElfMachine.XTENSA,
          "EM_RISCV", ElfMachine.RISC_V,
          "ET_EXEC", ElfReader.ET_EXEC,
          "PT_LOAD", ElfReader.PT_LOAD,
          "ELFCLASS32", ElfReader.CLASS_32);

  public ImageFormatRows() {
    super("G04_image_formats");
    formula("vtor_align", VectorTable.class, r -> VectorTable.alignment(r.whole("irqs")));
    formula("vec_count_bytes", VectorTable.class, r -> VectorTable.bytes(r.whole("irqs")));
    formula("reset_ok", VectorTable.class, r -> VectorTable.thumb((long) r.number("word")) ? 1 : 0);
    formula("sp_ok", VectorTable.class, ImageFormatRows::stackFits);
    formula("ihex_sum", IntelHexReader.class, ImageFormatRows::checkByte);
    formula("ihex_valid", IntelHexReader.class, r -> valid(r.text("record")) ? 1 : 0);
    lookUp("ihex_addr", ImageFormatRows::address);
    formula(
        "uf2_blocks",
        Uf2Block.class,
        r -> Uf2Block.blocksFor((long) r.number("size"), r.whole("payload")));
    formula(
        "uf2_filesize",
        Uf2Block.class,
        r -> Uf2Block.BYTES * Uf2Block.blocksFor((long) r.number("size"), r.whole("payload")));
    formula(
        "crc_ascii",
        Crc32Mpeg2.class,
        r -> Crc32Mpeg2.of(r.text("text").getBytes(StandardCharsets.US_ASCII)));
    formula("crc_fill", Crc32Mpeg2.class, ImageFormatRows::filled);
    lookUp("local_elf", ImageFormatRows::elf);
  }

  private static double stackFits(HandbookRow r) {
    Range ram = Range.of((long) r.number("start"), (long) r.number("size"));
    return VectorTable.stackFits((long) r.number("sp"), ram) ? 1 : 0;
  }

  private static double checkByte(HandbookRow r) {
    byte[] bytes = HexFormat.of().parseHex(r.text("record"));
    return IntelHexReader.checksum(bytes, bytes.length);
  }

  private static double filled(HandbookRow r) {
    byte[] bytes = new byte[r.whole("count")];
    Arrays.fill(bytes, (byte) r.whole("byte"));
    return Crc32Mpeg2.of(bytes);
  }

  private static boolean valid(String record) {
    String file = record.equals(END) ? record : record + "\n" + END;
    try {
      IntelHexReader.read(file.getBytes(StandardCharsets.US_ASCII));
      return true;
    } catch (BrokenImage e) {
      return false;
    }
  }

  private static Use address(HandbookRow r) {
    StringBuilder file = new StringBuilder();
    int upper = (int) r.number("upper");
    Formats.hexRecord(file, 4, 0, new byte[] {(byte) (upper >> 8), (byte) upper});
    file.append(r.text("record")).append('\n').append(END);
    try {
      Image image = IntelHexReader.read(file.toString().getBytes(StandardCharsets.US_ASCII));
      return image.contents().isEmpty()
          ? Use.none("a record without data has no place")
          : Use.number(image.contents().span().start(), IntelHexReader.class);
    } catch (BrokenImage e) {
      return Use.none("a record without data has no place");
    }
  }

  private static Use elf(HandbookRow r) {
    Integer value = ELF.get(r.text("macro"));
    return value == null
        ? Use.none("the reader has no need of it")
        : Use.number(value, ElfReader.class);
  }

  @Override
  protected Use fact(HandbookRow row) {
    String quantity = row.quantity();
    if (CONSTANTS.containsKey(quantity)) {
      Class<?> by = quantity.startsWith("UF2") ? Uf2Block.class : ElfReader.class;
      return Use.number(
          CONSTANTS.get(quantity), quantity.startsWith("RP2040") ? SecondStageCheck.class : by);
    }
    if (quantity.startsWith("UF2 family ")) {
      OptionalLong id = Uf2Families.number(quantity.substring("UF2 family ".length()));
      return id.isPresent()
          ? Use.number(id.getAsLong(), Uf2Families.class)
          : Use.none("no controller of that family is in the catalogue");
    }
    if (row.has("rectyp")) {
      return HexRecordType.of(row.whole("rectyp"))
          .map(t -> Use.text(t.words(), HexRecordType.class))
          .orElseThrow();
    }
    return Use.none("a definition in words, or bytes of one compiler's output");
  }
}
