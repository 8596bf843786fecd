package dev.gantrywright.prove;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.CommandGate;
import dev.gantrywright.link.CommandTable;
import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.DialectFile;
import dev.gantrywright.link.LineProtocol;
import dev.gantrywright.link.ReceivedLine;
import dev.gantrywright.link.Reply;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;

/**
 * Random reply lines, half of them made of the pieces that real replies are made of. The ordinary
 * run takes 30,000; {@code -Dfuzz.lines=1000000} is the full count.
 */
class ReplyFuzzTest {
  private static final int LINES = Integer.getInteger("fuzz.lines", 30_000);
  private static final long SEED = Long.getLong("fuzz.seed", 20_260_101L);

  private static final String[] PIECES = {
    "x_min",
    "y max",
    "Z",
    "probe",
    ":",
    "=",
    " = ",
    ",",
    ";",
    "|",
    "open",
    "TRIGGERED",
    "touched",
    "1",
    "0",
    "0.5",
    "-",
    "+",
    "ok",
    "done",
    "ok T:",
    "resend: ",
    "rs 7",
    "error: ",
    "busy",
    "start",
    "halted",
    "M92 X80.00",
    "keep steps/mm:",
    " X80",
    " Y-1e9",
    "999999999999999999999",
    "\t",
    "  ",
    "\u0000",
    "\u00e9",
    "\uFFFD",
    "(",
    ")",
    "*33",
    "N12 ",
    "//",
    "\\",
    "$",
    "%s",
    "\"",
    "steps per mm"
  };

  private static final class Deaf implements LineProtocol.Peer {
    @Override
    public void send(byte[] bytes) {}

    @Override
    public void heard(ReceivedLine line) {}

    @Override
    public void restarted(String banner) {}

    @Override
    public void silent(String why) {}
  }

  @Test
  void noLineIsTooStrange() {
    SplittableRandom random = new SplittableRandom(SEED);
    Dialect dialect = DialectFile.standard();
    LineProtocol protocol =
        new LineProtocol(dialect, new CommandGate(CommandTable.standard(), dialect), new Deaf());
    EndstopReader endstops = new EndstopReader(dialect);
    EndstopNames names = new EndstopNames(List.of("xMin", "yMax", "zMin"), java.util.Map.of());
    StoredSettings settings = new StoredSettings(dialect);
    long now = 0;
    int readings = 0;
    CompletableFuture<Reply> reply = CompletableFuture.completedFuture(null);
    for (int i = 0; i < LINES; i++) {
      byte[] line = line(random);
      now += random.nextLong(50_000_000L);
      if (reply.isDone()) {
        reply = new CompletableFuture<>();
        protocol.submit("M119", reply, now);
      }
      protocol.received(line, line.length, now);
      String text = new String(line, StandardCharsets.UTF_8);
      for (EndstopReading reading : endstops.read(List.of(text))) {
        names.match(reading.name());
        readings++;
      }
      settings.read(List.of(text)).forEach((path, value) -> assertThat(value.value()).isNotNaN());
    }
    assertThat(readings).as("some lines must mean something").isPositive();
    // Whatever came, the protocol still works once the line is quiet.
    protocol.tick(now + 10_000_000_000L);
    protocol.tick(now + 20_000_000_000L);
    CompletableFuture<Reply> last = new CompletableFuture<>();
    protocol.submit("M119", last, now + 30_000_000_000L);
    protocol.lost("end", now + 40_000_000_000L);
    assertThat(last).isCompleted();
  }

  private static byte[] line(SplittableRandom random) {
    if (random.nextBoolean()) {
      byte[] noise = new byte[random.nextInt(80)];
      random.nextBytes(noise);
      return noise;
    }
    StringBuilder b = new StringBuilder();
    for (int n = random.nextInt(12); n >= 0; n--) {
      b.append(PIECES[random.nextInt(PIECES.length)]);
    }
    String end = new String[] {"\n", "\r\n", "\r", "", "\n\r"}[random.nextInt(5)];
    return b.append(end).toString().getBytes(StandardCharsets.UTF_8);
  }
}
