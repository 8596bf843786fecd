package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Output of real tools, each beside what must be read from it. The logs were made with GCC 12.2 for
 * ARM, GCC 5.4 for AVR, Clang and lld 14, GNU make 4.3, and Clang 16 for its SARIF; that of GCC,
 * whose version here writes none, follows the standard.
 */
class DiagnosticReaderTest {
  private static final Path CASES = Path.of("src/test/resources/build/diagnostics");

  static Stream<Path> logs() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      return files.filter(f -> f.toString().endsWith(".log")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("logs")
  void readsWhatTheToolSaid(Path log) throws IOException {
    Path golden = log.resolveSibling(log.getFileName().toString().replace(".log", ".txt"));
    List<String> read =
        DiagnosticReader.readAll(Files.readAllLines(log)).stream()
            .map(DiagnosticReaderTest::shown)
            .toList();
    if (Boolean.getBoolean("golden.update")) {
      Files.write(golden, read);
    }
    assertThat(read).containsExactlyElementsOf(Files.readAllLines(golden));
  }

  @Test
  void everyGoldenFileHasItsLog() throws IOException {
    try (Stream<Path> files = Files.list(CASES)) {
      assertThat(files.filter(f -> f.toString().endsWith(".txt")))
          .allMatch(
              f ->
                  Files.exists(
                      f.resolveSibling(f.getFileName().toString().replace(".txt", ".log"))))
          .hasSize((int) logs().count());
    }
  }

  @Test
  void overflowIsReadInBytes() {
    Diagnostic d =
        DiagnosticReader.readAll(
                List.of("/opt/bin/arm-none-eabi-ld: region `FLASH' overflowed by 1024 bytes"))
            .get(0);
    assertThat(d.text()).isEqualTo("region FLASH is over by 1024 bytes");
    assertThat(d.overBytes()).hasValue(1024);
  }

  @Test
  void curlyQuotesNameTheSameIdentifiers() {
    Diagnostic d = DiagnosticReader.readAll(List.of("a.c:1:2: error: ‘STRIDE’ undeclared")).get(0);
    assertThat(d.names()).containsExactly("STRIDE");
  }

  @Test
  void windowsPathsKeepTheirDrive() {
    Diagnostic d =
        DiagnosticReader.readAll(List.of("C:\\fw\\nest.h:12:5: warning: odd [-Wundef]")).get(0);
    assertThat(d.file()).isEqualTo("C:\\fw\\nest.h");
    assertThat(d.line()).isEqualTo(12);
    assertThat(d.flag()).isEqualTo("-Wundef");
  }

  @Test
  void ordinaryOutputIsLeftAlone() {
    assertThat(
            DiagnosticReader.readAll(
                List.of(
                    "[{ not json",
                    "mkdir -p out",
                    "time: 12:30:01 error: none",
                    "Compiling nest.c: done",
                    "{",
                    "  braces",
                    "}")))
        .isEmpty();
  }

  @Property(tries = 500)
  void neverThrows(@ForAll @Size(max = 20) List<String> lines) {
    assertThat(DiagnosticReader.readAll(lines)).isNotNull();
  }

  private static String shown(Diagnostic d) {
    StringBuilder out =
        new StringBuilder(
            String.format(
                Locale.ROOT,
                "%s %s %s:%d:%d %s | %s",
                d.origin(),
                d.level(),
                d.file(),
                d.line(),
                d.column(),
                d.flag().isEmpty() ? "-" : d.flag(),
                d.text()));
    out.append(" | names ").append(d.names());
    d.overBytes().ifPresent(n -> out.append(" | over ").append(n));
    d.notes()
        .forEach(
            n ->
                out.append(" | note ")
                    .append(n.file())
                    .append(':')
                    .append(n.line())
                    .append(' ')
                    .append(n.text()));
    return out.toString();
  }
}
