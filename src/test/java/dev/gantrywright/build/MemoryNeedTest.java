package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Flash and RAM out of the three ways in which builds tell them. */
class MemoryNeedTest {
  private static Optional<MemoryNeed> of(String... lines) {
    List<ReportedSize> sizes = new ArrayList<>();
    SizeReader reader = new SizeReader(sizes::add);
    List.of(lines).forEach(reader::line);
    return MemoryNeed.of(sizes);
  }

  @Test
  void fromTheLinkersTable() {
    assertThat(
            of(
                "           FLASH:        3508 B       992 KB      0.35%",
                "             RAM:          76 B       128 KB      0.06%",
                "             CCM:           8 B        64 KB      0.01%"))
        .hasValue(new MemoryNeed(3508, 76));
  }

  @Test
  void fromSize() {
    assertThat(
            of(
                "   text\t   data\t    bss\t    dec\t    hex\tfilename",
                "   3508\t      4\t     76\t   3588\t    e04\ta.elf"))
        .hasValue(new MemoryNeed(3512, 80));
  }

  @Test
  void fromTheAvrForm() {
    assertThat(of("Program:    3116 bytes (1.2% Full)", "Data:         68 bytes (0.8% Full)"))
        .hasValue(new MemoryNeed(3116, 68));
  }

  @Test
  void nothingFromNothing() {
    assertThat(of("done")).isEmpty();
  }
}
