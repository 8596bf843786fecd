package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.TestFirmware;
import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The verb image as a user types it. */
class ImageVerbTest {
  @TempDir Path folder;

  private static CommandRun image(Object... words) {
    String[] args = new String[words.length + 1];
    args[0] = "image";
    for (int i = 0; i < words.length; i++) {
      args[i + 1] = words[i].toString();
    }
    return CommandRun.of(args);
  }

  @Test
  void judgesTheBoardsOwnBuild() throws Exception {
    Path elf = TestFirmware.elf(folder);
    Path bin = folder.resolve("fulmar-m4.bin");
    CommandRun run = image(bin, "--mcu", "STM32F405RGT6", "--offset", "0x8000", "--format", "json");
    assertThat(run.status()).as(run.err() + run.out()).isZero();
    JsonNode d = run.json();
    assertThat(image(bin, "--mcu", "STM32F405RG", "--offset", "0x8000").out())
        .contains("flash                  [B#.", "nothing against loading");
    assertThat(d.path("format").asString()).isEqualTo("raw binary");
    assertThat(d.path("start").asLong()).isEqualTo(0x08008000L);
    assertThat(d.path("bytes").asLong()).isEqualTo(Files.size(bin));
    assertThat(d.path("refused").asBoolean()).isFalse();
    assertThat(d.path("memory").path(0).path("used").asLong()).isEqualTo(0x8000 + Files.size(bin));
    JsonNode e = image(elf, "--mcu", "STM32F405RG", "--offset", "32K", "--format", "json").json();
    assertThat(e.path("machine").asString()).isEqualTo("ARM");
    assertThat(e.path("use").path("bss").asLong()).isPositive();
  }

  @Test
  void wrongOffsetAndControllerAreErrors() {
    TestFirmware.elf(folder);
    Path bin = folder.resolve("fulmar-m4.bin");
    CommandRun offset = image(bin, "--mcu", "STM32F405RG");
    assertThat(offset.status()).isEqualTo(1);
    assertThat(offset.out()).contains("error reset-outside-image", "refused: do not load");
    CommandRun small = image(bin, "--mcu", "STM32F103C8", "--offset", "0x8000");
    assertThat(small.status()).isEqualTo(1);
    assertThat(small.out()).contains("error stack-outside-ram", "0x20020000");
  }

  @Test
  void aBoardSheetGivesEverything() {
    TestFirmware.elf(folder);
    Path sheet = Path.of("demo-profiles/fulmar-m4.board.json");
    CommandRun bin =
        image(folder.resolve("fulmar-m4.bin"), "--board", sheet, "--not-for", "Petrel 81");
    assertThat(bin.status()).as(bin.out()).isZero();
    CommandRun elf = image(folder.resolve("fulmar-m4.elf"), "--board", sheet);
    assertThat(elf.status()).isEqualTo(1);
    assertThat(elf.out()).contains("error loader-other-format");
    assertThat(
            image(folder.resolve("fulmar-m4.bin"), "--board", sheet, "--not-for", "Fulmar").out())
        .doesNotContain("names-other");
  }

  @Test
  void withoutAControllerItReadsOnly() throws Exception {
    Path file = Files.write(folder.resolve("a.bin"), new byte[100]);
    CommandRun run = image(file);
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("not judged: name the controller");
    assertThat(image(file, "--offset", "0x8000").status()).isZero();
  }

  @Test
  void badInputIsOneLineAndStatusTwo() throws Exception {
    TestFirmware.elf(folder);
    Path elf = folder.resolve("fulmar-m4.elf");
    Path cut = Files.write(folder.resolve("cut.elf"), Arrays.copyOf(Files.readAllBytes(elf), 900));
    for (CommandRun run :
        new CommandRun[] {
          image(cut),
          image(folder.resolve("no.bin")),
          image(folder),
          image(elf, "--mcu", "NOSUCH"),
          image(elf, "--mcu", "STM32F405RG", "--offset", "-5"),
          image(elf, "--mcu", "STM32F405RG", "--offset", "lots")
        }) {
      assertThat(run.status()).as(run.err()).isEqualTo(2);
      assertThat(run.err().strip()).isNotEmpty().doesNotContain("\n").doesNotContain("Exception");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void avrHexIsJudgedToo() {
    Tool.need("avr-objcopy");
    Path elf = TestFirmware.avrElf(folder);
    Path hex = folder.resolve("p.hex");
    Tool.mustRun(
        folder, "avr-objcopy", "-O", "ihex", "-R", ".eeprom", elf.toString(), hex.toString());
    CommandRun run = image(hex, "--mcu", "ATmega2560");
    assertThat(run.status()).as(run.out()).isZero();
    assertThat(run.out()).contains("an AVR program");
  }
}
