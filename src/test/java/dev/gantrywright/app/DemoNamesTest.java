package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.Setting;
import dev.gantrywright.names.NameMapJson;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The demo's name map says what the demo's folder holds. */
class DemoNamesTest {
  private static final Path MAP = Path.of("demo-profiles/rookery-2.3.names.json");

  @Test
  void everyEntryStandsWhereTheMapSays() throws Exception {
    OpenPrinter printer = new Opening().open(Path.of("demo-profiles/heron.printer.json"));
    assertThat(printer.names().fields()).hasSizeGreaterThan(50);
    printer
        .names()
        .fields()
        .forEach(
            (path, entry) -> {
              if (entry.file().endsWith(".h")) {
                assertThat(printer.folder().named(entry.macro()))
                    .as(path)
                    .extracting(Setting::file, Setting::line)
                    .contains(org.assertj.core.groups.Tuple.tuple(entry.file(), entry.line()));
              } else {
                assertThat(
                        printer
                            .folder()
                            .buildSettings()
                            .get(0)
                            .entry(entry.section(), entry.macro()))
                    .as(path)
                    .isPresent();
              }
            });
  }

  @Test
  void theMapIsWrittenBackAsItStands() throws Exception {
    String written = NameMapJson.text(NameMapJson.read(MAP));
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(MAP, written, StandardCharsets.UTF_8);
    }
    assertThat(MAP).usingCharset(StandardCharsets.UTF_8).hasContent(written);
  }
}
