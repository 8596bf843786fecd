package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.TestFirmware;
import dev.gantrywright.board.Tool;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is special to the RP2040, to UF2 families and to AVR parts. */
class OtherControllersTest {
  @TempDir Path out;

  private static List<String> ids(Image image, Chip chip, Loader loader) {
    return ImageJudge.judge(image, chip, loader, Circumstances.unknown()).remarks().stream()
        .map(Remark::id)
        .toList();
  }

  /** Second stage of zeros and ones with its checksum; the program's vectors follow at 0x100. */
  private static byte[] rp2040(boolean goodChecksum) {
    byte[] program = new CortexProgram(0x10000100L, 0x20042000L, 4096).raw();
    byte[] all = new byte[256 + program.length];
    Arrays.fill(all, 0, 252, (byte) 0x55);
    long crc = Crc32Mpeg2.of(Arrays.copyOf(all, 252));
    ByteBuffer.wrap(all)
        .order(ByteOrder.LITTLE_ENDIAN)
        .putInt(252, (int) crc + (goodChecksum ? 0 : 1));
    System.arraycopy(program, 0, all, 256, program.length);
    return all;
  }

  @Test
  void secondStageNeedsItsChecksum() {
    byte[] good = Formats.uf2(0x10000000L, rp2040(true), 256, 0xE48BFF56L);
    byte[] bad = Formats.uf2(0x10000000L, rp2040(false), 256, 0xE48BFF56L);
    assertThat(ids(CortexProgram.read(good), TestChips.RP2040, Loader.none())).isEmpty();
    assertThat(ids(CortexProgram.read(bad), TestChips.RP2040, Loader.none()))
        .containsExactly("second-stage-checksum");
  }

  @Test
  void uf2FamilyMustBeThePartsOwn() {
    byte[] other = Formats.uf2(0x10000000L, rp2040(true), 256, 0x57755A57L);
    byte[] none = Formats.uf2(0x10000000L, rp2040(true), 256, 0);
    Verdict v =
        ImageJudge.judge(
            CortexProgram.read(other), TestChips.RP2040, Loader.none(), Circumstances.unknown());
    assertThat(v.remarks()).singleElement().extracting(Remark::id).isEqualTo("uf2-other-family");
    assertThat(v.remarks().get(0).evidence())
        .contains("names STM32F4 0x57755A57; RP2040 is RP2040 0xE48BFF56");
    assertThat(ids(CortexProgram.read(none), TestChips.RP2040, Loader.none()))
        .containsExactly("uf2-without-family");
  }

  @Test
  void realAvrProgramPassesAndItsBreaksAreFound() throws Exception {
    Path elf = TestFirmware.avrElf(out);
    Tool.mustRun(out, "avr-objcopy", "-O", "binary", "-R", ".eeprom", elf.toString(), "p.bin");
    byte[] raw = Files.readAllBytes(out.resolve("p.bin"));
    assertThat(ids(CortexProgram.read(raw), TestChips.MEGA2560, Loader.none())).isEmpty();
    assertThat(ids(ImageReader.read(elf), TestChips.MEGA2560, Loader.none()))
        .containsExactly("image-beside-flash");
    byte[] cut = Arrays.copyOf(raw, 100);
    assertThat(ids(CortexProgram.read(cut), TestChips.MEGA2560, Loader.none()))
        .containsExactly("avr-reset-outside");
    byte[] noJump = raw.clone();
    noJump[0] = 0;
    noJump[1] = 0;
    assertThat(ids(CortexProgram.read(noJump), TestChips.MEGA2560, Loader.none()))
        .containsExactly("avr-no-reset-jump");
    byte[] wrongVector = raw.clone();
    wrongVector[6] = (byte) 0xFF;
    wrongVector[7] = (byte) 0x7F;
    assertThat(ids(CortexProgram.read(wrongVector), TestChips.MEGA2560, Loader.none()))
        .containsExactly("avr-vector-outside");
  }

  @Test
  void jumpsDecodeAsTheDisassemblerReadsThem() throws Exception {
    Path elf = TestFirmware.avrElf(out);
    String text = Tool.mustRun(out, "avr-objdump", "-d", elf.toString());
    Contents c = ImageReader.read(elf).contents();
    java.util.regex.Matcher m =
        java.util.regex.Pattern.compile(
                "(?m)^\\s+([0-9a-f]+):.*\\t(?:jmp|rjmp)\\t\\S+\\s+;\\s+(?:0x)?([0-9a-f]+)")
            .matcher(text);
    int seen = 0;
    while (m.find()) {
      long at = Long.parseLong(m.group(1), 16);
      assertThat(AvrProgram.jumpTarget(c, at, 256 << 10)).hasValue(Long.parseLong(m.group(2), 16));
      seen++;
    }
    assertThat(seen).isGreaterThan(50);
  }

  @Test
  void avrBootSectionIsLeftAlone() throws Exception {
    Path elf = TestFirmware.avrElf(out);
    Tool.mustRun(out, "avr-objcopy", "-O", "binary", "-R", ".eeprom", elf.toString(), "p.bin");
    byte[] raw = Arrays.copyOf(Files.readAllBytes(out.resolve("p.bin")), (256 << 10) - 4096);
    assertThat(ids(CortexProgram.read(raw), TestChips.MEGA2560, Loader.none()))
        .containsExactly("avr-in-boot-section");
    Loader known = new Loader(0, 8192, Set.of());
    assertThat(ids(CortexProgram.read(raw), TestChips.MEGA2560, known))
        .containsExactly("image-too-large");
  }

  @Test
  void variablesBeyondTheRamAreFound() throws Exception {
    Path elf = TestFirmware.elf(out);
    Chip small =
        new Chip(
            "STM32F405 cut down",
            "STM32F4",
            Core.ARM_V7M,
            TestChips.F405.flash(),
            0,
            List.of(new Chip.Bank("main", Range.of(0x20000000L, 16))),
            TestChips.F405.interrupts(),
            TestChips.F405.uf2Families(),
            "made up");
    assertThat(ids(ImageReader.read(elf), small, Loader.offset(TestFirmware.OFFSET)))
        .contains("variables-outside-ram", "stack-outside-ram");
    assertThat(ids(ImageReader.read(elf), TestChips.F405, Loader.offset(TestFirmware.OFFSET)))
        .isEmpty();
  }

  @Test
  void pictureAddsUp() throws Exception {
    Path elf = TestFirmware.elf(out);
    Verdict v =
        ImageJudge.judge(
            ImageReader.read(elf),
            TestChips.F405,
            Loader.offset(TestFirmware.OFFSET),
            Circumstances.unknown());
    for (MemoryPicture.Bank bank : v.picture().banks()) {
      assertThat(bank.fills().stream().mapToLong(f -> f.range().size()).sum())
          .isEqualTo(bank.range().size());
    }
    long program = v.examination().image().contents().byteCount();
    assertThat(v.picture().banks().get(0).usedBytes()).isEqualTo(0x8000 + program);
    ImageDetails.Elf details = (ImageDetails.Elf) v.examination().image().details();
    assertThat(v.picture().banks().get(1).usedBytes()).isEqualTo(details.use().ramBytes());
  }
}
