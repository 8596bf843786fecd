package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DemoWorkshopTest {
  private static final Path SHIPPED = Path.of("demo-profiles");

  @TempDir Path folder;

  @Test
  void everyByteOfTheDemoIsUnpacked() throws Exception {
    Path first = DemoWorkshop.unpack(folder.resolve("workshop"));
    assertThat(first).hasFileName(DemoWorkshop.FIRST_PRINTER);
    Path header = Path.of("rookery-2.3", "config", "roost.h");
    assertThat(first.resolveSibling(header.toString()))
        .hasSameBinaryContentAs(SHIPPED.resolve(header));
  }

  @Test
  void whatTheUserChangedStays() throws Exception {
    Path first = DemoWorkshop.unpack(folder);
    Files.writeString(first, "mine");
    Files.delete(folder.resolve("guillemot.printer.json"));
    DemoWorkshop.unpack(folder);
    assertThat(first).hasContent("mine");
    assertThat(folder.resolve("guillemot.printer.json")).exists();
  }
}
