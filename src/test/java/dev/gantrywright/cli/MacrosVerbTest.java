package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class MacrosVerbTest {
  @TempDir private Path dir;
  private Path header;

  @BeforeEach
  void writeAHeader() throws IOException {
    Files.writeString(dir.resolve("egg.h"), "#define EGGS 4\n");
    header =
        Files.writeString(
            dir.resolve("nest.h"),
            """
            #include "egg.h"
            #define TWIGS  12   /* many */
            #ifdef __DUCK__
            #define WET 1
            #endif
            #define LAY( n )  lay( n )
            #ifdef BIG
            #define SIZE BIG
            #endif
            """);
  }

  @Test
  void listsWhatIsLiveSortedAndSpaced() {
    CommandRun run = CommandRun.of("macros", header.toString());
    assertThat(run.out()).isEqualTo("#define EGGS 4\n#define LAY(n) lay( n )\n#define TWIGS 12\n");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
  }

  @Test
  void takesDefinesAndHeadsSeveralFiles() {
    CommandRun run =
        CommandRun.of(
            "macros", dir.resolve("egg.h").toString(), header.toString(), "--define", "BIG=9");
    assertThat(run.out())
        .contains("/* " + header + " */\n#define BIG 9\n#define EGGS 4\n")
        .contains("#define SIZE BIG\n");
  }

  @Test
  void theOpenViewHasStates() {
    CommandRun run = CommandRun.of("macros", "--open", "--format", "json", header.toString());
    JsonNode macros = run.json().get("macros");
    assertThat(macros).hasSize(5);
    JsonNode wet = macros.get(4);
    assertThat(wet.get("name").asString()).isEqualTo("WET");
    assertThat(wet.get("state").asString()).isEqualTo("open");
    assertThat(wet.get("line").asInt()).isEqualTo(4);
    assertThat(wet.get("value").asString()).isEqualTo("1");
    assertThat(wet.get("file").asString()).isEqualTo(header.toString());
    assertThat(wet.get("reason").asString()).contains("__DUCK__");
  }

  @Test
  void aMissingFileIsOneLineAndStatusTwo() {
    CommandRun run = CommandRun.of("macros", dir.resolve("none.h").toString());
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("there is no such file");
    assertThat(CommandRun.of("macros", dir.toString()).err()).contains("this is a folder");
  }

  @Test
  void aMissingHeaderIsToldAndTheRestIsListed() throws IOException {
    Path file = Files.writeString(dir.resolve("x.h"), "#include <nowhere.h>\n#define X 1\n");
    CommandRun run = CommandRun.of("macros", file.toString());
    assertThat(run.out()).isEqualTo("#define X 1\n");
    assertThat(run.err()).contains("x.h:1: the header <nowhere.h> was not found");
    assertThat(run.status()).isZero();
  }

  @Test
  void thePlainFormPrintsBytesUnchanged() throws IOException {
    byte[] latin = "#define MARK \"\u00b5\"\n".getBytes(StandardCharsets.ISO_8859_1);
    Path file = Files.write(dir.resolve("latin.h"), latin);
    MacrosArguments arguments = MacrosArguments.parse(new String[] {"macros", file.toString()}, 1);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    int status = MacrosText.print(arguments, out, new PrintWriter(new StringWriter()));
    assertThat(out.toByteArray()).isEqualTo(latin);
    assertThat(status).isZero();
  }

  @Test
  void onlyThePlainFormIsParsedByHand() {
    assertThat(MacrosArguments.parse(new String[] {"macros", "--open", "a.h"}, 1)).isNull();
    assertThat(MacrosArguments.parse(new String[] {"macros", "--help"}, 1)).isNull();
    assertThat(MacrosArguments.parse(new String[] {"macros"}, 1)).isNull();
    assertThat(MacrosArguments.parse(new String[] {"macros", "a.h", "--define"}, 1)).isNull();
    MacrosArguments plain =
        MacrosArguments.parse(
            new String[] {"macros", "a.h", "--define=A", "--include", "d", "--define", "B=2"}, 1);
    assertThat(plain.defines()).containsExactly("A", "B=2");
    assertThat(plain.include()).containsExactly(Path.of("d"));
    assertThat(plain.files()).containsExactly(Path.of("a.h"));
  }
}
