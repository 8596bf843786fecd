package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import dev.gantrywright.image.BrokenImage.Reason;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Broken files, each refused for the right reason, in one line that says where. */
class BrokenImagesTest {
  static Stream<Arguments> broken() {
    String good = ":0400000001020304F2\n";
    String end = ":00000001FF\n";
    byte[] uf2 = Formats.uf2(0x10000000L, new byte[700], 256, 0xE48BFF56L);
    return Stream.of(
        arguments("nothing", new byte[0], Reason.EMPTY, "file"),
        arguments("HEX cut off", text(good), Reason.NO_END, "line 1"),
        arguments(
            "HEX check byte", text(":0400000001020304F3\n" + end), Reason.BAD_CHECKSUM, "line 1"),
        arguments(
            "HEX data changed",
            text(good + ":0400040001020305EE\n" + end),
            Reason.BAD_CHECKSUM,
            "line 2"),
        arguments("HEX short", text(":04000000010203F2\n" + end), Reason.BAD_LENGTH, "line 1"),
        arguments("HEX long", text(":040000000102030405F2\n" + end), Reason.BAD_LENGTH, "line 1"),
        arguments("HEX half byte", text(":0400000001020304F\n" + end), Reason.BAD_LENGTH, "line 1"),
        arguments(
            "HEX letter", text(":04000000010203G4F2\n" + end), Reason.BAD_CHARACTER, "column 16"),
        arguments(
            "HEX without colon",
            text(good + "0400040001020304EE\n" + end),
            Reason.BAD_CHARACTER,
            "line 2"),
        arguments("HEX type", text(":00000006FA\n" + end), Reason.UNKNOWN_RECORD, "type 6"),
        arguments("HEX after end", text(end + good), Reason.AFTER_END, "line 2"),
        arguments(
            "HEX twice", text(good + ":0400000001020305F1\n" + end), Reason.OVERLAP, "0x00000003"),
        arguments("HEX empty", text(end), Reason.NOTHING_TO_LOAD, "Intel HEX"),
        arguments("HEX base width", text(":0100000408F3\n" + end), Reason.BAD_LENGTH, "type 4"),
        arguments(
            "HEX past 4 GiB",
            text(":02000004FFFFFC\n:04FFFE0001020304F5\n" + end),
            Reason.ADDRESS_RANGE,
            "32-bit"),
        arguments(
            "S-record check byte",
            text("S1050000AABB96\nS9030000FC\n"),
            Reason.BAD_CHECKSUM,
            "line 1"),
        arguments("S-record cut off", text("S1050000AABB95\n"), Reason.NO_END, "line 1"),
        arguments(
            "S-record type", text("S1050000AABB95\nS4030000FC\n"), Reason.UNKNOWN_RECORD, "line 2"),
        arguments(
            "S-record count",
            text("S1050000AABB95\nS5030002FA\nS9030000FC\n"),
            Reason.BAD_COUNT,
            "counts 2"),
        arguments(
            "S-record length", text("S1060000AABB95\nS9030000FC\n"), Reason.BAD_LENGTH, "line 1"),
        arguments("UF2 cut off", Arrays.copyOf(uf2, 1000), Reason.TRUNCATED, "512"),
        arguments("UF2 block lost", Arrays.copyOf(uf2, 1024), Reason.BAD_COUNT, "block 0"),
        arguments("UF2 block twice", twice(uf2), Reason.BLOCK_SEQUENCE, "block 1"),
        arguments(
            "UF2 end magic", with(uf2, b -> b.put(508, (byte) 0)), Reason.BAD_MAGIC, "block 0"),
        arguments("UF2 payload", with(uf2, b -> b.putInt(16, 477)), Reason.BAD_PAYLOAD, "477"),
        arguments(
            "UF2 nothing for flash",
            with(Arrays.copyOf(Formats.uf2(0, new byte[9], 256, 1), 512), b -> b.putInt(8, 1)),
            Reason.NOTHING_TO_LOAD,
            "main flash"),
        arguments("ELF header cut", Arrays.copyOf(SmallElf.arm(), 40), Reason.TRUNCATED, "header"),
        arguments(
            "ELF 64 bit",
            with(SmallElf.arm(), b -> b.put(4, (byte) 2)),
            Reason.NOT_EXECUTABLE,
            "32-bit"),
        arguments(
            "ELF object file",
            with(SmallElf.arm(), b -> b.putShort(16, (short) 1)),
            Reason.NOT_EXECUTABLE,
            "type 1"),
        arguments(
            "ELF byte order",
            with(SmallElf.arm(), b -> b.put(5, (byte) 9)),
            Reason.BAD_HEADER,
            "byte order"),
        arguments(
            "ELF table outside",
            with(SmallElf.arm(), b -> b.putInt(28, 9999)),
            Reason.TRUNCATED,
            "program header"),
        arguments(
            "ELF entry size",
            with(SmallElf.arm(), b -> b.putShort(42, (short) 8)),
            Reason.BAD_HEADER,
            "entries"),
        arguments(
            "ELF segment outside",
            with(SmallElf.arm(), b -> b.putInt(52 + 16, 5000)),
            Reason.TRUNCATED,
            "segment 0"),
        arguments(
            "ELF nothing",
            with(SmallElf.arm(), b -> b.putShort(44, (short) 0)),
            Reason.NOTHING_TO_LOAD,
            "ELF"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("broken")
  void isRefused(String what, byte[] file, Reason reason, String says) {
    BrokenImage e = catchThrowableOfType(BrokenImage.class, () -> ImageReader.read(file));
    assertThat(e).as(what).isNotNull();
    assertThat(e.reason()).isEqualTo(reason);
    assertThat(e.getMessage()).contains(says).doesNotContain("\n").endsWith(".");
  }

  private static byte[] text(String s) {
    return s.getBytes(StandardCharsets.US_ASCII);
  }

  private static byte[] twice(byte[] uf2) {
    byte[] out = uf2.clone();
    System.arraycopy(out, 0, out, 512, 512);
    return out;
  }

  private static byte[] with(byte[] file, Consumer<ByteBuffer> change) {
    byte[] out = file.clone();
    change.accept(ByteBuffer.wrap(out).order(ByteOrder.LITTLE_ENDIAN));
    return out;
  }
}
