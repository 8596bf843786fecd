package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.gantrywright.image.BrokenImage.Reason;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Small files that ask for much: memory and time stay in proportion to the file. */
class ImageLimitsTest {
  private static BrokenImage broken(byte[] file) {
    BrokenImage problem = catchThrowableOfType(BrokenImage.class, () -> ImageReader.read(file));
    assertThat(problem).isNotNull();
    assertThat(problem.getMessage()).doesNotContain("\n");
    return problem;
  }

  @Test
  void aSegmentThatClaimsFourGigabytesIsCutOff() {
    byte[] elf = SmallElf.arm();
    ByteBuffer.wrap(elf).order(ByteOrder.LITTLE_ENDIAN).putInt(68, -1).putInt(72, -1);
    assertThat(broken(elf).reason()).isEqualTo(Reason.TRUNCATED);
  }

  @Test
  void aTableOfThousandsOfSegmentsIsRefused() {
    byte[] one = SmallElf.arm();
    int count = 2000;
    ByteBuffer file = ByteBuffer.allocate(52 + count * 32 + 64).order(ByteOrder.LITTLE_ENDIAN);
    file.put(one, 0, 52);
    for (int i = 0; i < count; i++) {
      file.put(one, 52, 32);
    }
    file.putShort(44, (short) count);
    assertThat(broken(file.array()).getMessage()).contains("more than 1024 segments");
  }

  @Test
  void familiesWithoutEndAreRefused() {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    for (int i = 0; i < 300; i++) {
      file.writeBytes(Formats.uf2Block(0x2000, 0x1000L * i, new byte[256], 299, 300, i));
    }
    BrokenImage problem = broken(file.toByteArray());
    assertThat(problem.reason()).isEqualTo(Reason.BAD_COUNT);
    assertThat(problem.getMessage()).contains("beyond the 256th");
  }

  @Test
  void recordsOfOneByteWithoutEndAreRefused() {
    String record = ":01000000AA55\n";
    byte[] file = record.repeat(1_000_001).getBytes(StandardCharsets.US_ASCII);
    assertThat(broken(file).getMessage()).contains("1,000,000 others");
  }
}
