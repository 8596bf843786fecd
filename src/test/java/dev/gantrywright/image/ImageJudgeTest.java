package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each question of the judge: a good image passes, a wrong one is refused for the right reason. */
class ImageJudgeTest {
  private static final long OFFSET = 0x8000;

  private static List<String> remarks(Image image, Chip chip, Loader loader, Circumstances around) {
    return ImageJudge.judge(image, chip, loader, around).remarks().stream()
        .map(r -> r.level().word() + " " + r.id())
        .toList();
  }

  private static List<String> f405(Image image, long offset) {
    return remarks(image, TestChips.F405, Loader.offset(offset), Circumstances.unknown());
  }

  @Test
  void aGoodImagePassesInEveryFormat() {
    CortexProgram p = CortexProgram.f405(OFFSET);
    byte[] uf2 = Formats.uf2(0x08000000L + OFFSET, p.raw(), 256, 0x57755A57L);
    byte[] srec = Formats.srec(0x08000000L + OFFSET, p.raw(), 32);
    byte[] elf =
        SmallElf.of(ElfMachine.ARM, 0x08000000L + OFFSET, p.raw(), 0x08000000L + OFFSET + 0x201);
    for (byte[] file : List.of(p.raw(), p.hex(), uf2, srec, elf)) {
      assertThat(f405(CortexProgram.read(file), OFFSET)).isEmpty();
    }
  }

  @Test
  void tooLargeSaysByHowMuch() {
    byte[] raw = Arrays.copyOf(CortexProgram.f405(OFFSET).raw(), (1 << 20) - 0x8000 + 100);
    Verdict v =
        ImageJudge.judge(
            CortexProgram.read(raw),
            TestChips.F405,
            Loader.offset(OFFSET),
            Circumstances.unknown());
    Remark r = v.remarks().get(0);
    assertThat(r.id()).isEqualTo("image-too-large");
    assertThat(r.text()).contains("over by 100 bytes");
    assertThat(v.picture().banks().get(0).fills())
        .anyMatch(f -> f.kind() == MemoryPicture.Kind.OVER && f.range().size() == 100);
  }

  @Test
  void bootloaderAtTheEndTakesRoomToo() {
    byte[] raw = Arrays.copyOf(CortexProgram.f405(0).raw(), (1 << 20) - 100);
    Loader loader = new Loader(0, 4096, Set.of());
    assertThat(remarks(CortexProgram.read(raw), TestChips.F405, loader, Circumstances.unknown()))
        .contains("error image-too-large");
  }

  @Test
  void anAddressedImageMustStartAtTheOffset() {
    Image image = CortexProgram.read(CortexProgram.f405(OFFSET).hex());
    assertThat(f405(image, 0x10000)).contains("error image-over-bootloader");
    assertThat(f405(image, 0)).contains("error image-behind-start", "error vectors-missing");
  }

  @Test
  void aRawImageLinkedElsewhereIsFoundByItsPointers() {
    Image image = CortexProgram.f405(OFFSET).read();
    assertThat(f405(image, 0)).contains("error linked-elsewhere", "error reset-outside-image");
    byte[] large = Arrays.copyOf(CortexProgram.f405(OFFSET).raw(), 200_000);
    assertThat(f405(CortexProgram.read(large), 0)).containsExactly("error linked-elsewhere");
  }

  @Test
  void stackMustLieInRam() {
    assertThat(f405(CortexProgram.f405(OFFSET).vector(0, 0x20020004L).read(), OFFSET))
        .containsExactly("error stack-outside-ram");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(0, 0x20000002L).read(), OFFSET))
        .containsExactly("error stack-misaligned");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(0, 0x2001FFFCL).read(), OFFSET))
        .containsExactly("warning stack-not-eight");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(0, 0x10010000L).read(), OFFSET))
        .as("top of the core-coupled bank")
        .isEmpty();
  }

  @Test
  void resetAndOtherVectorsMustPointIntoTheImage() {
    assertThat(f405(CortexProgram.f405(OFFSET).vector(1, 0x08008200L).read(), OFFSET))
        .containsExactly("error reset-without-thumb-bit");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(1, 0x080F8201L).read(), OFFSET))
        .containsExactly("error reset-outside-image");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(15, 0x080F8201L).read(), OFFSET))
        .containsExactly("error vector-outside-image");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(16 + 40, 0x080F8201L).read(), OFFSET))
        .as("an interrupt vector")
        .containsExactly("error vector-outside-image");
    assertThat(f405(CortexProgram.f405(OFFSET).vector(3, 0).read(), OFFSET))
        .containsExactly("warning hard-fault-unhandled");
  }

  @Test
  void theTableNeedsAnAlignedPlace() {
    assertThat(f405(CortexProgram.f405(0x8040).read(), 0x8040))
        .contains("error vectors-misaligned");
  }

  @Test
  void elfForAnotherProcessorIsRefused() {
    byte[] elf = SmallElf.of(ElfMachine.AVR, 0x08008000L, CortexProgram.f405(OFFSET).raw(), 0);
    assertThat(f405(CortexProgram.read(elf), OFFSET)).containsExactly("error other-machine");
  }

  @Test
  void imageForAnotherControllerLiesOutsideItsFlash() {
    Image image = CortexProgram.read(new CortexProgram(0x10000000L, 0x20042000L, 4096).hex());
    assertThat(f405(image, 0)).contains("error image-outside-flash");
  }

  @Test
  void lpcNeedsItsChecksumWhereItStartsFromReset() {
    CortexProgram p = new CortexProgram(0, 0x10008000L, 4096);
    assertThat(remarks(p.read(), TestChips.LPC1769, Loader.none(), Circumstances.unknown()))
        .containsExactly("error lpc-checksum");
    byte[] raw = p.raw();
    Contents c = CortexProgram.read(raw).contents();
    long sum = 0;
    for (int i = 0; i < 7; i++) {
      sum += c.word(4L * i).getAsLong();
    }
    p.vector(7, -sum);
    assertThat(remarks(p.read(), TestChips.LPC1769, Loader.none(), Circumstances.unknown()))
        .isEmpty();
    CortexProgram behind = new CortexProgram(0x4000, 0x10008000L, 4096);
    assertThat(
            remarks(
                behind.read(), TestChips.LPC1769, Loader.offset(0x4000), Circumstances.unknown()))
        .isEmpty();
  }

  @Test
  void formatMustSuitTheLoader() {
    Loader card = new Loader(OFFSET, 0, Set.of(ImageFormat.RAW));
    assertThat(
            remarks(
                CortexProgram.read(CortexProgram.f405(OFFSET).hex()),
                TestChips.F405,
                card,
                Circumstances.unknown()))
        .containsExactly("error loader-other-format");
  }

  @Test
  void blankTinyAndTextFilesAreNoPrograms() {
    byte[] erased = new byte[4096];
    Arrays.fill(erased, (byte) 0xFF);
    assertThat(f405(CortexProgram.read(erased), 0)).contains("error image-blank");
    assertThat(f405(CortexProgram.read(new byte[] {1, 2, 3}), 0)).contains("error image-tiny");
    byte[] page =
        "<html>not found</html>\n".repeat(10).getBytes(java.nio.charset.StandardCharsets.US_ASCII);
    assertThat(f405(CortexProgram.read(page), 0)).contains("error image-is-text");
  }

  @Test
  void staleAndRepeatedImagesAreTold() {
    Image image = CortexProgram.f405(OFFSET).read();
    Instant built = Instant.parse("2026-03-01T10:00:00Z");
    Circumstances newer =
        Circumstances.unknown()
            .built(built, new Circumstances.Source(Path.of("perch.h"), built.plusSeconds(5)));
    Circumstances older =
        Circumstances.unknown()
            .built(built, new Circumstances.Source(Path.of("perch.h"), built.minusSeconds(5)));
    assertThat(remarks(image, TestChips.F405, Loader.offset(OFFSET), newer))
        .containsExactly("error image-stale");
    assertThat(remarks(image, TestChips.F405, Loader.offset(OFFSET), older)).isEmpty();
    assertThat(
            remarks(
                image,
                TestChips.F405,
                Loader.offset(OFFSET),
                Circumstances.unknown().lastLoaded(image.sha256())))
        .containsExactly("note image-already-loaded");
  }

  @Test
  void namesOfAnotherBoardAreFound() {
    Circumstances boards =
        Circumstances.unknown()
            .boardNames(List.of("Fulmar M4"), List.of("Fulmar", "Petrel 81", "Heron"));
    Image wrong = CortexProgram.f405(OFFSET).text(0xE00, "board: PETREL_81 rev B").read();
    Image right = CortexProgram.f405(OFFSET).text(0xE00, "board: Fulmar M4").read();
    Image both =
        CortexProgram.f405(OFFSET).text(0xE00, "Fulmar M4").text(0xF00, "petrel-81").read();
    assertThat(remarks(wrong, TestChips.F405, Loader.offset(OFFSET), boards))
        .containsExactly("error names-other-board");
    assertThat(remarks(right, TestChips.F405, Loader.offset(OFFSET), boards)).isEmpty();
    assertThat(remarks(both, TestChips.F405, Loader.offset(OFFSET), boards))
        .containsExactly("warning names-other-board-too");
  }

  @Test
  void refusalYieldsOnlyToAReason() {
    Verdict v =
        ImageJudge.judge(
            CortexProgram.f405(OFFSET).vector(1, 0).read(),
            TestChips.F405,
            Loader.offset(OFFSET),
            Circumstances.unknown());
    assertThat(v.refusal(Optional.empty()).orElseThrow())
        .startsWith("load refused: The reset vector is even");
    assertThat(v.refusal(Optional.of("  "))).isPresent();
    assertThat(v.refusal(Optional.of("bench test without a motor"))).isEmpty();
  }
}
