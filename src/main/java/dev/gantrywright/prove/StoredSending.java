package dev.gantrywright.prove;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.Reply;

/**
 * Brings a machine's stored settings to the profile. Only the lines that a proof worked out can go
 * this way, the line is armed for them alone, and disarmed whatever happens.
 */
public final class StoredSending {
  /** To be shown, and agreed to, before anything is sent. */
  public static final String CAUTION =
      "WARNING: these lines change how far and how fast the machine moves from the next move on."
          + " Nothing may be under way; keep hands, hair and tools out of the machine and a hand at"
          + " its power switch. Do not send them to a machine that nobody stands at.";

  private StoredSending() {}

  /**
   * Sends them one after the other, each when the one before was obeyed.
   *
   * @return what went wrong; empty when all were obeyed
   */
  public static String send(LineSession session, ProofReport proof) throws InterruptedException {
    session.arm();
    try {
      for (String line : proof.linesToSend()) {
        Reply reply = session.askAndWait(line);
        if (!reply.answered()) {
          return line + ": " + reply.note();
        }
      }
      return "";
    } finally {
      session.disarm();
    }
  }
}
