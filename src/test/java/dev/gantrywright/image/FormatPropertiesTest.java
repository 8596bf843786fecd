package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

/** Laws of the readers: what was written comes back, at its address; one wrong bit is noticed. */
class FormatPropertiesTest {
  @Property(tries = 200)
  void hexComesBack(
      @ForAll @LongRange(min = 0, max = 0xFFFF0000L) long address,
      @ForAll @Size(min = 1, max = 600) byte[] data,
      @ForAll @IntRange(min = 1, max = 255) int perRecord)
      throws BrokenImage {
    comesBack(ImageReader.read(Formats.hex(address, data, perRecord)), address, data);
  }

  @Property(tries = 200)
  void srecComesBack(
      @ForAll @LongRange(min = 0, max = 0xFFFF0000L) long address,
      @ForAll @Size(min = 1, max = 600) byte[] data,
      @ForAll @IntRange(min = 1, max = 250) int perRecord)
      throws BrokenImage {
    comesBack(ImageReader.read(Formats.srec(address, data, perRecord)), address, data);
  }

  @Property(tries = 200)
  void uf2ComesBack(
      @ForAll @LongRange(min = 0, max = 0xFFFF0000L) long address,
      @ForAll @Size(min = 1, max = 3000) byte[] data,
      @ForAll @IntRange(min = 1, max = 476) int payload)
      throws BrokenImage {
    Image image = ImageReader.read(Formats.uf2(address, data, payload, 0xE48BFF56L));
    comesBack(image, address, data);
    ImageDetails.Uf2 uf2 = (ImageDetails.Uf2) image.details();
    assertThat(uf2.blocks()).isEqualTo((int) Uf2Block.blocksFor(data.length, payload));
  }

  @Property(tries = 300)
  void aChangedHexDigitIsNeverTakenForTheSameImage(
      @ForAll @Size(min = 16, max = 64) byte[] data,
      @ForAll @IntRange(min = 0, max = 10_000) int place,
      @ForAll @IntRange(min = 1, max = 15) int change)
      throws BrokenImage {
    byte[] file = Formats.hex(0x8000, data, 16);
    int at = place % file.length;
    int digit = Hex.digit(file[at]);
    if (digit < 0) {
      return;
    }
    file[at] = (byte) "0123456789ABCDEF".charAt(digit ^ change);
    try {
      ImageReader.read(file);
      assertThat(false).as("accepted with digit %d changed", at).isTrue();
    } catch (BrokenImage e) {
      assertThat(e.getMessage()).doesNotContain("\n").isNotBlank();
    }
  }

  @Example
  void theWorkedExampleOfTheTradeReads() throws BrokenImage {
    String file = ":10010000214601360121470136007EFE09D2190140\r\n:00000001FF\r\n";
    Image image = ImageReader.read(file.getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    assertThat(image.contents().span()).isEqualTo(new Range(0x100, 0x110));
    assertThat(image.contents().byteAt(0x101)).hasValue(0x46);
  }

  @Example
  void aSegmentedHexFileWrapsInsideItsSegment() throws BrokenImage {
    StringBuilder text = new StringBuilder();
    Formats.hexRecord(text, 2, 0, new byte[] {0x10, 0x00});
    Formats.hexRecord(text, 0, 0xFFFF, new byte[] {1, 2});
    Formats.hexRecord(text, 3, 0, new byte[] {0x10, 0x00, 0x00, 0x04});
    Formats.hexRecord(text, 1, 0, new byte[0]);
    Image image =
        ImageReader.read(text.toString().getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    assertThat(image.contents().byteAt(0x1FFFF)).hasValue(1);
    assertThat(image.contents().byteAt(0x10000)).hasValue(2);
    assertThat(image.entry()).hasValue(0x10004);
  }

  private static void comesBack(Image image, long address, byte[] data) {
    assertThat(image.contents().span()).isEqualTo(Range.of(address, data.length));
    assertThat(image.contents().flat(0)).isEqualTo(data);
    assertThat(image.contents().byteCount()).isEqualTo(data.length);
  }
}
