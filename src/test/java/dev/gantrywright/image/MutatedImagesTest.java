package dev.gantrywright.image;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Damaged images of every format: each is either read and judged, or refused with a reason; nothing
 * else ever comes out. {@code -Dimage.mutations=100000} runs the full count.
 */
class MutatedImagesTest {
  private static final int COUNT = Integer.getInteger("image.mutations", 4000);

  @Test
  void nothingButAVerdictOrAReasonComesOut() {
    List<byte[]> seeds = seeds();
    List<Chip> chips =
        List.of(TestChips.F405, TestChips.LPC1769, TestChips.RP2040, TestChips.MEGA2560);
    Map<ImageFormat, Integer> judged = new EnumMap<>(ImageFormat.class);
    Map<BrokenImage.Reason, Integer> refused = new EnumMap<>(BrokenImage.Reason.class);
    for (int i = 0; i < COUNT; i++) {
      Random random = new Random(i * 0x9E3779B97F4A7C15L);
      byte[] file = damaged(seeds, i, random);
      Chip chip = chips.get(random.nextInt(chips.size()));
      try {
        Image image = ImageReader.read(file);
        Verdict v =
            ImageJudge.judge(
                image, chip, Loader.offset(random.nextInt(3) * 0x8000L), Circumstances.unknown());
        assertThat(v.picture().banks()).isNotEmpty();
        judged.merge(image.format(), 1, Integer::sum);
      } catch (BrokenImage e) {
        assertThat(e.getMessage()).doesNotContain("\n");
        refused.merge(e.reason(), 1, Integer::sum);
      } catch (RuntimeException e) {
        throw new AssertionError("mutation " + i + " threw", e);
      }
    }
    assertThat(judged.keySet()).contains(ImageFormat.values());
    assertThat(refused).hasSizeGreaterThan(10);
    System.out.println(COUNT + " mutated images: judged " + judged + ", refused " + refused);
  }

  /** Text records are also damaged before they get their check bytes, so that some pass. */
  private static byte[] damaged(List<byte[]> seeds, int i, Random random) {
    int seed = i % seeds.size();
    if (seed == 1 && random.nextBoolean()) {
      return Formats.hex(random.nextInt() & 0xFFFFFFF0L, mutated(seeds.get(0), random), 32);
    }
    if (seed == 2 && random.nextBoolean()) {
      return Formats.srec(0x08000000L + random.nextInt(99_999), mutated(seeds.get(0), random), 9);
    }
    return mutated(seeds.get(seed), random);
  }

  private static List<byte[]> seeds() {
    byte[] program = CortexProgram.f405(0x8000).raw();
    List<byte[]> seeds = new ArrayList<>();
    seeds.add(program);
    seeds.add(Formats.hex(0x08008000L, program, 32));
    seeds.add(Formats.srec(0x08008000L, program, 32));
    seeds.add(Formats.uf2(0x08008000L, program, 256, 0x57755A57L));
    seeds.add(SmallElf.of(ElfMachine.ARM, 0x08008000L, program, 0x08008201L));
    return seeds;
  }

  /** One to eight changes: bits, bytes, cuts, doubled and moved stretches, extreme words. */
  private static byte[] mutated(byte[] seed, Random random) {
    byte[] out = seed.clone();
    int changes = 1 + random.nextInt(8);
    for (int k = 0; k < changes && out.length > 8; k++) {
      // Headers matter most: half of the changes hit the first 128 bytes.
      int bound = random.nextBoolean() ? Math.min(128, out.length) : out.length;
      int at = random.nextInt(bound);
      switch (random.nextInt(7)) {
        case 0 -> out[at] ^= (byte) (1 << random.nextInt(8));
        case 1 -> out[at] = (byte) random.nextInt(256);
        case 2 -> out = java.util.Arrays.copyOf(out, at + 1);
        case 3 -> {
          int n = Math.min(out.length - at, 1 + random.nextInt(64));
          System.arraycopy(out, at, out, random.nextInt(out.length - n + 1), n);
        }
        case 4 -> {
          for (int i = at; i < Math.min(at + 4, out.length); i++) {
            out[i] = (byte) 0xFF;
          }
        }
        case 5 -> {
          for (int i = at; i < Math.min(at + 4, out.length); i++) {
            out[i] = 0;
          }
        }
        default -> out = java.util.Arrays.copyOf(out, out.length + 1 + random.nextInt(600));
      }
    }
    return out;
  }
}
