package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.LogEntry.Direction;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

class LogTextLawsTest {
  /** The platform's own formatting is the measure; a log of more than a year is not meant. */
  @Property
  void secondsReadAsThePlatformFormatsThem(
      @ForAll @LongRange(max = 31_000_000_000_000_000L) long nanos) {
    String row = LogText.of(Direction.SENT, nanos, new byte[0], 0, 0);
    String platform =
        new java.math.BigDecimal(nanos)
            .movePointLeft(9)
            .setScale(6, java.math.RoundingMode.HALF_UP)
            .toPlainString();
    assertThat(row).isEqualTo(String.format(Locale.ROOT, "%13s > ", platform));
  }

  @Property
  void everyByteIsTold(@ForAll byte[] bytes) {
    StringBuilder plain = new StringBuilder();
    for (byte raw : bytes) {
      int c = raw & 0xFF;
      plain.append(
          switch (c) {
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            case '\t' -> "\\t";
            case '\\' -> "\\\\";
            default ->
                c >= ' ' && c < 0x7F
                    ? String.valueOf((char) c)
                    : String.format(Locale.ROOT, "\\x%02X", c);
          });
    }
    assertThat(LogText.of(Direction.RECEIVED, 0, bytes, 0, bytes.length))
        .isEqualTo("     0.000000 < " + plain);
  }
}
