package dev.gantrywright.link;

import java.util.List;

/**
 * What became of one command.
 *
 * @param command as the caller gave it
 * @param outcome whether it was answered, and if not, why
 * @param lines what came back, the acknowledgement's own text included where it carries any
 * @param note why it failed; empty when it was answered
 * @param sentNanos when it was sent, on the monotonic clock; 0 when it never was
 * @param doneNanos when it was settled
 */
public record Reply(
    String command,
    Outcome outcome,
    List<String> lines,
    String note,
    long sentNanos,
    long doneNanos) {
  /** How a command ended. */
  public enum Outcome {
    ANSWERED,
    /** The machine answered with an error message. */
    FAILED,
    TIMED_OUT,
    /** The board restarted before it had answered. */
    RESTARTED,
    /** A stop overtook it. */
    STOPPED,
    /** The line went. */
    LOST,
    /** Never sent: it needs arming, or is no command. */
    REFUSED
  }

  public Reply {
    lines = List.copyOf(lines);
  }

  /** A command that went with its line, or never reached one. */
  static Reply lost(String command, String why, long nanos) {
    return new Reply(command, Outcome.LOST, List.of(), why, 0, nanos);
  }

  public boolean answered() {
    return outcome == Outcome.ANSWERED;
  }

  /** From sending to the end of the reply, in nanoseconds. */
  public long latencyNanos() {
    return sentNanos == 0 ? 0 : doneNanos - sentNanos;
  }
}
