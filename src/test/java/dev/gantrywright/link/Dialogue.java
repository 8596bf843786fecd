package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * Plays a dialogue against the protocol, in made-up time. Lines of the file:
 *
 * <pre>
 * @ {json}        entries laid over the standard dialect, first line only
 * ! command       the program asks; "! stop", "! arm", "! disarm"
 * > text          exactly this was sent since the last such line (escapes \n \r \xNN)
 * > nothing       nothing was sent
 * < text          this arrives
 * ~ 1500 ms       time passes
 * ~ flood N       N bytes arrive without a line end
 * ~ lost          the line goes
 * = OUTCOME a | b the oldest command that is not settled yet ended so, with these lines
 * = pending       it has not ended
 * = stop yes|no   whether the stop was confirmed
 * * text          this unsolicited line was heard
 * * restart text  the board restarted
 * * silent        the line counts as lost
 * </pre>
 */
final class Dialogue implements LineProtocol.Peer {
  private final StringBuilder sent = new StringBuilder();
  private final Deque<String> events = new ArrayDeque<>();
  private final Deque<CompletableFuture<Reply>> asked = new ArrayDeque<>();
  private final LineProtocol protocol;
  private final CommandGate gate;
  private CompletableFuture<StopOutcome> stop = new CompletableFuture<>();
  private long now = 5_000_000_000L;

  private Dialogue(Dialect dialect) {
    gate = new CommandGate(CommandTable.standard(), dialect);
    protocol = new LineProtocol(dialect, gate, this);
  }

  static void play(List<String> script) {
    boolean own = script.get(0).startsWith("@");
    Dialogue d =
        new Dialogue(own ? DialectFile.with(script.get(0).substring(1)) : DialectFile.standard());
    for (int i = own ? 1 : 0; i < script.size(); i++) {
      String line = script.get(i);
      if (!line.isBlank() && !line.startsWith("#")) {
        d.step(line, i + 1);
      }
    }
    assertThat(d.sent.toString()).as("sent after the last line").isEmpty();
    assertThat(d.events).as("events after the last line").isEmpty();
  }

  private void step(String line, int number) {
    String rest = line.length() > 2 ? line.substring(2) : "";
    String as = "line " + number + ": " + line;
    switch (line.charAt(0)) {
      case '!' -> command(rest);
      case '>' -> {
        assertThat(sent.toString()).as(as).isEqualTo(rest.equals("nothing") ? "" : bytes(rest));
        sent.setLength(0);
      }
      case '<' -> arrive(bytes(rest).getBytes(StandardCharsets.ISO_8859_1));
      case '~' -> fault(rest);
      case '=' -> outcome(rest, as);
      case '*' -> assertThat(events.pollFirst()).as(as).isEqualTo(rest);
      default -> throw new IllegalArgumentException(as);
    }
  }

  private void command(String command) {
    switch (command) {
      case "stop" -> {
        stop = new CompletableFuture<>();
        protocol.stop(stop, now);
      }
      case "arm" -> gate.arm();
      case "disarm" -> gate.disarm();
      default -> {
        CompletableFuture<Reply> reply = new CompletableFuture<>();
        asked.addLast(reply);
        protocol.submit(command, reply, now);
      }
    }
  }

  private void fault(String fault) {
    if (fault.equals("lost")) {
      protocol.lost("unplugged", now);
    } else if (fault.startsWith("flood ")) {
      byte[] block = new byte[4096];
      Arrays.fill(block, (byte) 'U');
      for (int left = Integer.parseInt(fault.substring(6)); left > 0; left -= block.length) {
        arrive(Arrays.copyOf(block, Math.min(left, block.length)));
      }
    } else {
      long end = now + Long.parseLong(fault.replace(" ms", "")) * 1_000_000L;
      while (end - now > 0) {
        // Never past a moment at which the protocol wants to act.
        long step = Math.min(end - now, Math.max(1, protocol.nanosToTick(now)));
        now += step;
        protocol.tick(now);
      }
    }
  }

  private void arrive(byte[] bytes) {
    protocol.received(bytes, bytes.length, now);
  }

  private void outcome(String wanted, String as) {
    if (wanted.startsWith("stop ")) {
      assertThat(stop).as(as).isCompleted();
      assertThat(stop.join().confirmed()).as(as).isEqualTo(wanted.endsWith("yes"));
      return;
    }
    CompletableFuture<Reply> oldest = asked.peekFirst();
    assertThat(oldest).as(as).isNotNull();
    if (wanted.equals("pending")) {
      assertThat(oldest).as(as).isNotCompleted();
      return;
    }
    asked.pollFirst();
    assertThat(oldest).as(as).isCompleted();
    Reply reply = oldest.join();
    List<String> parts = new ArrayList<>();
    parts.add(reply.outcome().name());
    if (!reply.lines().isEmpty()) {
      parts.add(String.join(" | ", reply.lines()));
    }
    assertThat(String.join(" ", parts)).as(as).isEqualTo(wanted);
  }

  private static String bytes(String text) {
    StringBuilder b = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '\\') {
        b.append(c);
        continue;
      }
      char kind = text.charAt(++i);
      switch (kind) {
        case 'n' -> b.append('\n');
        case 'r' -> b.append('\r');
        case 'x' -> {
          b.append((char) Integer.parseInt(text.substring(i + 1, i + 3), 16));
          i += 2;
        }
        default -> b.append(kind);
      }
    }
    return b.toString();
  }

  @Override
  public void send(byte[] bytes) {
    sent.append(new String(bytes, StandardCharsets.ISO_8859_1));
  }

  @Override
  public void heard(ReceivedLine line) {
    events.addLast(line.text());
  }

  @Override
  public void restarted(String banner) {
    events.addLast("restart " + banner);
  }

  @Override
  public void silent(String why) {
    events.addLast("silent");
  }
}
