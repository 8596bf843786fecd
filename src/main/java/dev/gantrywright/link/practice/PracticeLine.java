package dev.gantrywright.link.practice;

import dev.gantrywright.link.LineSplitter;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** The practice board's serial input and output: bytes of commands in, bytes of replies out. */
public final class PracticeLine {
  /** Longest command that the board takes, in bytes. */
  private static final int LONGEST_COMMAND = 512;

  private final PracticeBoard board;
  private final LineSplitter splitter;
  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  public PracticeLine(PracticeBoard board) {
    this.board = board;
    this.splitter =
        new LineSplitter(LONGEST_COMMAND, line -> answer(board.obey(line.text(), line.nanos())));
  }

  private void answer(Iterable<String> lines) {
    for (String line : lines) {
      out.writeBytes((line + "\r\n").getBytes(StandardCharsets.UTF_8));
    }
  }

  /** What the board sends when it is switched on. */
  public byte[] banner() {
    return (board.banner() + "\r\n").getBytes(StandardCharsets.UTF_8);
  }

  /**
   * Takes bytes and gives the replies to every line that they end.
   *
   * @param now the monotonic clock
   */
  public byte[] take(byte[] bytes, int count, long now) {
    splitter.feed(bytes, count, now);
    byte[] reply = out.toByteArray();
    out.reset();
    return reply;
  }
}
