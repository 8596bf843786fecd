package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;

/** Memory use as the tools print it. */
class SizeReaderTest {
  private static List<ReportedSize> read(String... lines) {
    List<ReportedSize> out = new ArrayList<>();
    SizeReader reader = new SizeReader(out::add);
    for (String line : lines) {
      reader.line(line);
    }
    return out;
  }

  @Test
  void linkerTable() {
    assertThat(
            read(
                "Memory region         Used Size  Region Size  %age Used",
                "           FLASH:        3508 B       992 KB      0.35%",
                "             RAM:          76 B       128 KB      0.06%"))
        .containsExactly(
            new ReportedSize("FLASH", 3508, OptionalLong.of(992 << 10)),
            new ReportedSize("RAM", 76, OptionalLong.of(128 << 10)));
  }

  @Test
  void berkeleyTable() {
    assertThat(
            read(
                "   text\t   data\t    bss\t    dec\t    hex\tfilename",
                "   3508\t      4\t     76\t   3588\t    e04\tout/fulmar-m4.elf"))
        .extracting(ReportedSize::usedBytes)
        .containsExactly(3508L, 4L, 76L);
  }

  @Test
  void avrTable() {
    assertThat(read("Program:    3116 bytes (1.2% Full)", "Data:         68 bytes (0.8% Full)"))
        .containsExactly(
            new ReportedSize("Program", 3116, OptionalLong.empty()),
            new ReportedSize("Data", 68, OptionalLong.empty()));
  }

  @Test
  void numbersElsewhereAreNoSizes() {
    assertThat(read("  12  13  14  15  af  x", "FLASH: many B of KB")).isEmpty();
  }
}
