package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.prove.PracticeMachine;
import java.io.ByteArrayOutputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.json.JsonMapper;

class ShownWriterTest {
  private static final String SANDPIPER = "demo-profiles/sandpiper.printer.json";

  /** Clears the screen, renames the window, C1 CSI, backspace, and text that runs backwards. */
  private static final String HOSTILE = "a\u001b[2J\u001b]0;x\u0007b\u009b31mc\bd\u202eevil";

  private static String through(String text) throws Exception {
    StringWriter out = new StringWriter();
    try (ShownWriter shown = new ShownWriter(out)) {
      shown.write(text);
      for (char c : text.toCharArray()) {
        shown.write(c);
      }
    }
    return out.toString();
  }

  @Test
  void showsWhatWouldSteerATerminal() throws Exception {
    String once = "a\\x1b[2J\\x1b]0;x\\x07b\\u009b31mc\\x08d\\u202eevil";
    assertThat(through(HOSTILE)).isEqualTo(once + once);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "x = 1\r\n\ty\n", "° µ Ω é 数 — “q” 😀", "~ \u00a0 | \\x1b"})
  void leavesEveryOtherTextAsItIs(String text) throws Exception {
    assertThat(through(text)).isEqualTo(text + text);
  }

  /** What a whole verb prints, to the byte, of a board that says such things. */
  private static String printed(String... more) throws Exception {
    PracticeBoard hostile =
        new PracticeBoard(
            PracticeMachine.of(
                ProfileStore.read(Path.of(SANDPIPER)),
                Map.of("identity", "rook " + HOSTILE + ", a release with a long name".repeat(3))),
            1,
            System.nanoTime());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PracticeServer server =
            PracticeServer.listen(0, hostile, Wire.ideal(), System::nanoTime, Thread::new);
        BytePrinter out = new BytePrinter(bytes, StandardCharsets.UTF_8)) {
      String[] args = new String[more.length + 4];
      System.arraycopy(
          new String[] {"prove", SANDPIPER, "--port", "tcp://127.0.0.1:" + server.port()},
          0,
          args,
          0,
          4);
      System.arraycopy(more, 0, args, 4, more.length);
      assertThat(Cli.run(out, out, args)).isLessThanOrEqualTo(ExitStatus.FINDINGS);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  @Test
  void aBoardCannotSteerTheTerminalThatProvesIt() throws Exception {
    String text = printed("--expect", "version=9");
    assertThat(text).contains("rook a\\x1b[2J").contains("\\u202eevil");
    assertThat(text.chars().filter(c -> c < ' ' || (c >= 0x7F && c < 0xA0) || c == 0x202E))
        .allMatch(c -> c == '\n' || c == '\r');
  }

  @Test
  void aDocumentKeepsItsMeaning() throws Exception {
    String json = printed("--format", "json");
    assertThat(JsonMapper.shared().readTree(json).path("identity").toString()).contains("evil");
    assertThat(JsonMapper.shared().readTree(json).path("identity").get(0).asString())
        .contains(HOSTILE);
  }

  @Test
  void helpHoldsNoCodesForAColouredTerminal() {
    CommandRun help = CommandRun.of("prove", "--help");
    assertThat(help.out()).contains("Usage:").doesNotContain("\u001b");
  }
}
