package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.TestFirmware;
import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Intel HEX and S-record as objcopy writes them, byte for byte against the raw binary. */
class TextFormatsAgainstToolsTest {
  @TempDir Path out;

  @Test
  void armConversionsGiveTheSameBytes() throws Exception {
    Path elf = TestFirmware.elf(out);
    conversions(elf, "arm-none-eabi-objcopy", 0x08008000L);
  }

  @Test
  void avrConversionsGiveTheSameBytes() throws Exception {
    Path elf = TestFirmware.avrElf(out);
    conversions(elf, "avr-objcopy", 0);
  }

  private void conversions(Path elf, String objcopy, long address) throws Exception {
    byte[] binary = Files.readAllBytes(convert(elf, objcopy, "whole.bin", "-O", "binary"));
    List<Path> files = new ArrayList<>();
    files.add(convert(elf, objcopy, "a.hex", "-O", "ihex"));
    files.add(convert(elf, objcopy, "a.srec", "-O", "srec"));
    files.add(convert(elf, objcopy, "b.srec", "-O", "srec", "--srec-forceS3"));
    files.add(convert(elf, objcopy, "c.srec", "-O", "srec", "--srec-len=8"));
    for (Path file : files) {
      Image image = ImageReader.read(file);
      assertThat(image.contents().segments()).as("%s is one run", file).hasSize(1);
      assertThat(image.contents().span().start()).isEqualTo(address);
      assertThat(image.contents().flat(0)).as("%s", file).isEqualTo(binary);
      assertThat(image.entry().orElse(0)).isEqualTo(ImageReader.read(elf).entry().orElse(0));
    }
  }

  private static Path convert(Path elf, String objcopy, String name, String... options) {
    Path to = elf.resolveSibling(name);
    List<String> command = new ArrayList<>(List.of(objcopy, "-R", ".eeprom"));
    command.addAll(List.of(options));
    command.addAll(List.of(elf.toString(), to.toString()));
    Tool.mustRun(elf.getParent(), command.toArray(String[]::new));
    return to;
  }
}
