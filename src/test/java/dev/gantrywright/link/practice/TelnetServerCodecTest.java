package dev.gantrywright.link.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class TelnetServerCodecTest {
  private final List<Integer> bauds = new ArrayList<>();
  private final TelnetServerCodec codec = new TelnetServerCodec(115_200, bauds::add);

  private static byte[] bytes(int... values) {
    byte[] b = new byte[values.length];
    for (int i = 0; i < values.length; i++) {
      b[i] = (byte) values[i];
    }
    return b;
  }

  private byte[] feed(int... values) {
    byte[] b = bytes(values);
    return codec.decode(b, b.length);
  }

  @Test
  void aPlainClientGetsPlainBytes() {
    assertThat(feed('M', '1', '\n')).isEqualTo("M1\n".getBytes(StandardCharsets.US_ASCII));
    assertThat(codec.takeReplies()).isEmpty();
    assertThat(codec.encode(bytes(255))).isEqualTo(bytes(255));
  }

  @Test
  void agreesToWhatItKnowsOnceAndRefusesTheRest() {
    assertThat(feed(255, 253, 44, 255, 251, 0, 255, 253, 1)).isEmpty();
    assertThat(codec.takeReplies()).isEqualTo(bytes(255, 251, 44, 255, 253, 0, 255, 252, 1));
    feed(255, 253, 44);
    assertThat(codec.takeReplies()).isEmpty();
  }

  @Test
  void setsAndConfirmsTheBaudRate() {
    // 250000 is 0x0003D090.
    feed(255, 250, 44, 1, 0, 3, 0xD0, 0x90, 255, 240);
    assertThat(bauds).containsExactly(250_000);
    assertThat(codec.takeReplies()).isEqualTo(bytes(255, 250, 44, 101, 0, 3, 0xD0, 0x90, 255, 240));
    // Zero asks for what is in force.
    feed(255, 250, 44, 1, 0, 0, 0, 0, 255, 240);
    assertThat(codec.takeReplies()).isEqualTo(bytes(255, 250, 44, 101, 0, 3, 0xD0, 0x90, 255, 240));
  }

  @Test
  void doubles255() {
    feed(255, 253, 44);
    assertThat(codec.encode(bytes(1, 255, 2))).isEqualTo(bytes(1, 255, 255, 2));
    assertThat(feed(1, 255, 255, 2)).isEqualTo(bytes(1, 255, 2));
  }

  @Property(tries = 2_000)
  void anyBytesInAnyPiecesAreTaken(@ForAll @Size(max = 200) byte[] noise, @ForAll byte cut) {
    TelnetServerCodec whole = new TelnetServerCodec(9_600, b -> {});
    TelnetServerCodec pieces = new TelnetServerCodec(9_600, b -> {});
    byte[] once = whole.decode(noise, noise.length);
    int at = Math.floorMod(cut, noise.length + 1);
    byte[] first = pieces.decode(java.util.Arrays.copyOf(noise, at), at);
    byte[] rest = java.util.Arrays.copyOfRange(noise, at, noise.length);
    byte[] second = pieces.decode(rest, rest.length);
    byte[] joined = java.util.Arrays.copyOf(first, first.length + second.length);
    System.arraycopy(second, 0, joined, first.length, second.length);
    assertThat(joined).isEqualTo(once);
    assertThat(pieces.takeReplies()).isEqualTo(whole.takeReplies());
  }

  @Test
  void anOptionWithoutEndTakesNoMoreThanItsRoom() {
    feed(255, 250, 44, 2);
    for (int i = 0; i < 10_000; i++) {
      feed(255, 1, 7, 255, 255);
    }
    feed(255, 240);
    assertThat(codec.takeReplies().length).isBetween(200, 600);
    assertThat(feed('M')).isEqualTo(bytes('M'));
  }
}
