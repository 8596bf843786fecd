package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Whatever text a caller hands in, an unarmed line carries nothing but the plain questions. The
 * judge here is the list of bytes allowed on the wire, not the gate's own reading of the text.
 */
class CommandGateLawsTest {
  private static final Set<String> ALLOWED =
      Set.of("M105\n", "M114\n", "M115\n", "M119\n", "M503\n", "\nM112\n");

  private static final class Recorder implements LineProtocol.Peer {
    private final List<String> sent = new ArrayList<>();

    @Override
    public void send(byte[] bytes) {
      sent.add(new String(bytes, StandardCharsets.ISO_8859_1));
    }

    @Override
    public void heard(ReceivedLine line) {}

    @Override
    public void restarted(String banner) {}

    @Override
    public void silent(String why) {}
  }

  @Property(tries = 20_000)
  void nothingButQuestionsReachesAnUnarmedLine(@ForAll("commands") String command) {
    assertThat(ALLOWED).containsAll(sentFor(command));
  }

  @Property(tries = 5_000)
  void norAnyOtherText(@ForAll String command) {
    assertThat(ALLOWED).containsAll(sentFor(command));
  }

  @Property(tries = 5_000)
  void oneCommandIsOneLineEvenWhenArmed(@ForAll("commands") String command) {
    Recorder recorder = new Recorder();
    CommandGate gate = new CommandGate(CommandTable.standard(), DialectFile.standard());
    gate.arm();
    LineProtocol protocol = new LineProtocol(DialectFile.standard(), gate, recorder);
    protocol.submit(command, new CompletableFuture<>(), 0);
    for (String sent : recorder.sent) {
      String body = sent.equals("\nM112\n") ? "M112" : sent.substring(0, sent.length() - 1);
      assertThat(body.chars()).allMatch(c -> c >= ' ' && c < 0x7F || c == '\t');
      assertThat(body).hasSizeLessThanOrEqualTo(CommandGate.LONGEST);
    }
  }

  /** Each command alone on a fresh line, its reply never given, then two more behind it. */
  private static List<String> sentFor(String command) {
    Recorder recorder = new Recorder();
    CommandGate gate = new CommandGate(CommandTable.standard(), DialectFile.standard());
    LineProtocol protocol = new LineProtocol(DialectFile.standard(), gate, recorder);
    byte[] ok = "ok\nresend: 1\nrs\nok\n".getBytes(StandardCharsets.US_ASCII);
    for (int i = 0; i < 2; i++) {
      protocol.submit(command, new CompletableFuture<>(), 0);
      protocol.received("ok\n".getBytes(StandardCharsets.US_ASCII), 3, 1);
    }
    // What the machine answers must not open the gate either; numbered lines are undone for the
    // list.
    protocol.submit(command, new CompletableFuture<>(), 2);
    protocol.received(ok, ok.length, 3);
    return recorder.sent.stream()
        .map(s -> s.replaceFirst("^N\\d+ ([^*]*)\\*\\d+\n$", "$1\n"))
        .toList();
  }

  @Provide
  Arbitrary<String> commands() {
    Arbitrary<String> word =
        Arbitraries.of(
            "G0",
            "G1",
            "g28",
            "G 28",
            "g 0 1",
            "M104",
            "m104",
            "M 104",
            "M0104",
            "M109",
            "M140",
            "M500",
            "M502",
            "M92",
            "M17",
            "M119",
            "m119",
            "M 119",
            "M1 19",
            "M105",
            "M115",
            "M503",
            "M112",
            "POWER hotend",
            "X10",
            "S200",
            "F3000",
            "!",
            "?",
            "$H",
            "~",
            "%");
    Arbitrary<String> glue =
        Arbitraries.of(
            "",
            " ",
            "  ",
            "\t",
            "\n",
            "\r",
            "\r\n",
            "\0",
            ";",
            " ; ",
            "(",
            ")",
            " (x) ",
            "*",
            "*33",
            " *71 ",
            "/",
            "\\",
            ":",
            "N1 ",
            "n22",
            "N",
            "\u00A0",
            "\u2028",
            "\uFF27\uFF11");
    Arbitrary<String> pair = Combinators.combine(glue, word).as((g, w) -> g + w);
    Arbitrary<String> many = pair.list().ofMinSize(1).ofMaxSize(4).map(l -> String.join("", l));
    return Combinators.combine(many, glue, glue).as((m, a, b) -> m + a + b);
  }
}
