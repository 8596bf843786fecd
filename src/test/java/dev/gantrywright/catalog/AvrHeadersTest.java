package dev.gantrywright.catalog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the AVR rows against the C library's device headers, where those are installed. */
class AvrHeadersTest {
  private static final Path HEADERS = Path.of("/usr/lib/avr/include/avr");

  @BeforeEach
  void headersAreInstalled() {
    boolean there = Files.isDirectory(HEADERS);
    if (!there && Boolean.getBoolean("board.required")) {
      fail("avr-libc's device headers are not installed in " + HEADERS);
    }
    assumeTrue(there, "avr-libc's device headers are not installed");
  }

  static Stream<Mcu> avrParts() {
    return Catalog.shipped().mcus().stream().filter(mcu -> mcu.family().equals("AVR"));
  }

  @ParameterizedTest
  @MethodSource("avrParts")
  void flashRamAndEepromAreThoseOfTheHeader(Mcu mcu) throws IOException {
    String header = Files.readString(headerOf(mcu));
    assertThat(mcu.flashBytes() - 1).isEqualTo(value(header, "FLASHEND"));
    assertThat(mcu.ram().get(0).base()).isEqualTo(value(header, "RAMSTART"));
    assertThat(mcu.ram().get(0).end() - 1).isEqualTo(value(header, "RAMEND"));
    assertThat(mcu.eepromBytes() - 1).isEqualTo(value(header, "E2END"));
  }

  private static Path headerOf(Mcu mcu) {
    Matcher named = Pattern.compile("device header (io\\w+\\.h)").matcher(mcu.partSource());
    assertThat(named.find()).as("the source of %s names its header", mcu.part()).isTrue();
    return HEADERS.resolve(named.group(1).toLowerCase(Locale.ROOT));
  }

  private static long value(String header, String macro) throws IOException {
    Matcher line =
        Pattern.compile("#\\s*define\\s+" + macro + "\\s+\\(?(0x[0-9A-Fa-f]+|\\d+)U?L?\\)?")
            .matcher(header);
    if (line.find()) {
      return Long.decode(line.group(1));
    }
    Matcher other = Pattern.compile("#\\s*include\\s+[<\"](?:avr/)?(\\w+\\.h)").matcher(header);
    while (other.find()) {
      Path included = HEADERS.resolve(other.group(1));
      if (Files.exists(included) && Files.readString(included).contains(macro)) {
        return value(Files.readString(included), macro);
      }
    }
    if (macro.equals("RAMEND")) {
      return value(header, "RAMSTART") + value(header, "RAMSIZE") - 1;
    }
    return fail("the header has no plain " + macro);
  }
}
