package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Held against the published UF2 specification, section by section. */
class Uf2SpecificationTest {
  private static final long RP2040 = 0xE48BFF56L;
  private static final long SAMD51 = 0x55114460L;

  @Test
  void fieldsStandWhereTheTableSays() throws BrokenImage {
    byte[] payload = new byte[256];
    Arrays.fill(payload, (byte) 7);
    byte[] file = Formats.uf2Block(0x2000, 0x10000000L, payload, 0, 1, RP2040);
    Uf2Block block = Uf2Block.read(file, 0);
    assertThat(block.address()).isEqualTo(0x10000000L);
    assertThat(block.payloadBytes()).isEqualTo(256);
    assertThat(block.number()).isZero();
    assertThat(block.count()).isEqualTo(1);
    assertThat(block.family()).isEqualTo(RP2040);
    assertThat(block.payload()).isEqualTo(payload);
    assertThat(file[Uf2Block.ADDRESS_OFFSET + 3]).isEqualTo((byte) 0x10);
    assertThat(file[Uf2Block.END_MAGIC_OFFSET]).isEqualTo((byte) 0x30);
  }

  @Test
  void theLastFieldIsAFamilyOnlyWithItsFlag() throws BrokenImage {
    byte[] file = Formats.uf2Block(0, 0, new byte[256], 0, 1, 512);
    assertThat(Uf2Block.read(file, 0).family()).isZero();
  }

  @Test
  void blocksOutsideTheMainFlashAreSkippedButCounted() throws BrokenImage {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(Formats.uf2Block(0x2000, 0x10000000L, new byte[256], 0, 2, RP2040));
    file.writeBytes(Formats.uf2Block(0x2001, 0x10000100L, new byte[256], 1, 2, RP2040));
    Image image = ImageReader.read(file.toByteArray());
    assertThat(image.contents().byteCount()).isEqualTo(256);
    assertThat(((ImageDetails.Uf2) image.details()).skipped()).isEqualTo(1);
  }

  @Test
  void filesOfTwoFamiliesMayBeConcatenated() throws BrokenImage {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(Formats.uf2(0x4000, filled(600, 1), 256, SAMD51));
    file.writeBytes(Formats.uf2(0x10000000L, filled(300, 2), 256, RP2040));
    Image image = ImageReader.read(file.toByteArray());
    Map<Long, Contents> families = ((ImageDetails.Uf2) image.details()).families();
    assertThat(families.get(SAMD51).byteCount()).isEqualTo(600);
    assertThat(families.get(RP2040).byteCount()).isEqualTo(300);
    Examination e = Examination.of(image, TestChips.RP2040, Loader.none(), Circumstances.unknown());
    assertThat(e.image().contents().span().start()).isEqualTo(0x10000000L);
  }

  @Test
  void blocksMayComeInAnyOrder() throws BrokenImage {
    byte[] whole = Formats.uf2(0, filled(512, 9), 256, RP2040);
    byte[] turned = new byte[1024];
    System.arraycopy(whole, 512, turned, 0, 512);
    System.arraycopy(whole, 0, turned, 512, 512);
    assertThat(ImageReader.read(turned).contents().flat(0))
        .isEqualTo(ImageReader.read(whole).contents().flat(0));
  }

  /** The specification's own example: version 0.1.2 for a device named ACME Toaster mk3. */
  @Test
  void extensionTagsReadAsInTheExample() throws BrokenImage {
    byte[] tags =
        HexFormat.of()
            .parseHex(
                "09bcc79f302e312e32000000"
                    + "149d0d6541434d4520546f6173746572206d6b33"
                    + "ffffffff");
    byte[] block = Formats.uf2Block(0x2000 | 0x8000, 0, new byte[256], 0, 1, RP2040);
    System.arraycopy(tags, 0, block, 32 + 256, tags.length);
    ImageDetails.Uf2 uf2 = (ImageDetails.Uf2) ImageReader.read(block).details();
    assertThat(uf2.version()).hasValue("0.1.2");
    assertThat(uf2.device()).hasValue("ACME Toaster mk3");
  }

  @Test
  void tagsThatRunOutOfTheBlockAreLeftAlone() throws BrokenImage {
    byte[] block = Formats.uf2Block(0x8000, 0, new byte[472], 0, 1, 0);
    block[32 + 472] = (byte) 200;
    assertThat(((ImageDetails.Uf2) ImageReader.read(block).details()).version()).isEmpty();
  }

  private static byte[] filled(int size, int with) {
    byte[] out = new byte[size];
    Arrays.fill(out, (byte) with);
    return out;
  }
}
