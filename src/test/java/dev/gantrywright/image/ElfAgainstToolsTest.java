package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.TestFirmware;
import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** ELF files of two compilers, read here and by the GNU tools. */
class ElfAgainstToolsTest {
  @TempDir Path out;

  @Test
  void armProgramReadsAsTheToolsReadIt() throws Exception {
    sameAsTools(TestFirmware.elf(out), "arm-none-eabi-", ElfMachine.ARM, List.of());
  }

  @Test
  void avrProgramReadsAsTheToolsReadIt() throws Exception {
    sameAsTools(TestFirmware.avrElf(out), "avr-", ElfMachine.AVR, List.of("-R", ".eeprom"));
  }

  private void sameAsTools(Path elf, String prefix, int machine, List<String> without)
      throws Exception {
    Image image = ImageReader.read(elf);
    assertThat(image.format()).isEqualTo(ImageFormat.ELF);
    ImageDetails.Elf details = (ImageDetails.Elf) image.details();
    assertThat(details.machine().number()).isEqualTo(machine);
    assertThat(image.entry().getAsLong()).isEqualTo(entryOf(elf, prefix));
    assertThat(details.sections().stream().map(ElfAgainstToolsTest::line))
        .containsExactlyElementsOf(objdumpSections(elf, prefix));
    assertThat(details.use()).isEqualTo(sizeOf(elf, prefix));
    assertThat(programOf(image)).isEqualTo(binaryOf(elf, prefix, without));
  }

  /** objcopy writes one run from the lowest load address; AVR keeps EEPROM apart. */
  private static byte[] programOf(Image image) {
    return image.contents().within(new Range(0, 0x800000L << 8)).segments().stream()
        .filter(s -> s.address() < 0x800000L || s.address() >= 0x900000L)
        .reduce((a, b) -> b)
        .map(s -> new Contents(List.of(s)).flat(0))
        .orElseThrow();
  }

  private static String line(ElfSection s) {
    return String.format(
        Locale.ROOT,
        "%s %08x %08x %08x %s",
        s.name(),
        s.size(),
        s.address(),
        s.loadAddress(),
        s.stored() ? "CONTENTS" : "cleared");
  }

  /** {@code objdump -h}: number, name, size, VMA, LMA, then a line of flags. */
  private static List<String> objdumpSections(Path elf, String prefix) {
    String text = Tool.mustRun(elf.getParent(), prefix + "objdump", "-h", elf.toString());
    Matcher m =
        Pattern.compile(
                "^\\s*\\d+ (\\S+)\\s+(\\S+)  (\\S+)  (\\S+)  \\S+  \\S+\\n\\s+(.*)$",
                Pattern.MULTILINE)
            .matcher(text);
    List<String> lines = new ArrayList<>();
    while (m.find()) {
      boolean empty = Long.parseLong(m.group(2), 16) == 0;
      if (m.group(5).contains("ALLOC") && !empty) {
        String kept = m.group(5).contains("CONTENTS") ? "CONTENTS" : "cleared";
        // objdump gives a cleared section a load address that nothing is stored at.
        String load = kept.equals("CONTENTS") ? m.group(4) : m.group(3);
        lines.add(String.join(" ", m.group(1), m.group(2), m.group(3), load, kept));
      }
    }
    assertThat(lines).isNotEmpty();
    return lines;
  }

  private static MemoryUse sizeOf(Path elf, String prefix) {
    String[] row =
        Tool.mustRun(elf.getParent(), prefix + "size", elf.toString())
            .split("\n")[1]
            .strip()
            .split("\\s+");
    return new MemoryUse(Long.parseLong(row[0]), Long.parseLong(row[1]), Long.parseLong(row[2]));
  }

  private static long entryOf(Path elf, String prefix) {
    String text = Tool.mustRun(elf.getParent(), prefix + "readelf", "-h", elf.toString());
    Matcher m = Pattern.compile("Entry point address:\\s+0x([0-9a-f]+)").matcher(text);
    assertThat(m.find()).isTrue();
    return Long.parseLong(m.group(1), 16);
  }

  private static byte[] binaryOf(Path elf, String prefix, List<String> without) throws Exception {
    Path bin = elf.resolveSibling("whole.bin");
    List<String> command = new ArrayList<>(List.of(prefix + "objcopy", "-O", "binary"));
    command.addAll(without);
    command.addAll(List.of(elf.toString(), bin.toString()));
    Tool.mustRun(elf.getParent(), command.toArray(String[]::new));
    return Files.readAllBytes(bin);
  }
}
