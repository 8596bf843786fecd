package dev.gantrywright.board;

import java.nio.file.Path;

/** The small firmware of our own under {@code src/test/firmware}. */
public final class TestFirmware {
  public static final Path SOURCES = Path.of("src/test/firmware").toAbsolutePath();
  public static final long OFFSET = 0x8000;

  private TestFirmware() {}

  /** Builds it with its plain settings; returns the ELF file. */
  public static Path elf(Path out, String... variables) {
    Tool.need("make", "arm-none-eabi-gcc", "arm-none-eabi-objcopy");
    String[] command = new String[3 + variables.length];
    command[0] = "make";
    command[1] = "-s";
    command[2] = "OUT=" + out;
    System.arraycopy(variables, 0, command, 3, variables.length);
    Tool.mustRun(SOURCES, command);
    return out.resolve("fulmar-m4.elf");
  }

  /** Builds the AVR program; returns the ELF file. */
  public static Path avrElf(Path out) {
    Tool.need("avr-gcc", "avr-objcopy");
    Path elf = out.resolve("petrel-81.elf");
    Tool.mustRun(
        SOURCES,
        "avr-gcc",
        "-mmcu=atmega2560",
        "-Os",
        "-Wall",
        "avr/petrel.c",
        "-o",
        elf.toString());
    return elf;
  }
}
