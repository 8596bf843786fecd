package dev.gantrywright.prove;

import dev.gantrywright.link.Dialect;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Reply;
import dev.gantrywright.machine.PrinterProfile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Asks a connected machine for endstops, stored settings and identity, and compares. */
public final class Proof {
  private Proof() {}

  /**
   * Proves one machine. Only reading commands are sent.
   *
   * @param touched axis ends that the parked machine touches
   * @param identity what the firmware must say of itself: what it is, to the text
   * @throws LinkException when the machine does not answer the endstop question
   */
  public static ProofReport of(
      PrinterProfile profile,
      LineSession session,
      Set<String> touched,
      Map<String, String> identity)
      throws LinkException, InterruptedException {
    return of(profile, session, touched, identity, Map.of());
  }

  /**
   * The same, with what the record says of the firmware.
   *
   * @param recorded what the firmware was given to say of itself, as {@link IdentityCheck#recorded}
   *     takes it
   */
  public static ProofReport of(
      PrinterProfile profile,
      LineSession session,
      Set<String> touched,
      Map<String, String> identity,
      Map<String, String> recorded)
      throws LinkException, InterruptedException {
    Dialect dialect = session.dialect();
    EndstopReader reader = new EndstopReader(dialect);
    // A board that woke up slowly may still owe the answer to an earlier question: asked twice, the
    // second answer is the right one.
    Reply endstops =
        askUntil(session, dialect.endstopQuery(), lines -> !reader.read(lines).isEmpty());
    if (!endstops.answered()) {
      throw new LinkException(
          LinkException.Kind.SILENT,
          session.name()
              + ": no endstop states on '"
              + dialect.endstopQuery()
              + "' ("
              + endstops.note()
              + "): look at link.endstopQuery");
    }
    List<Check> checks = new ArrayList<>();
    List<EndstopReading> readings = reader.read(endstops.lines());
    checks.addAll(new RestCheck(profile, dialect.endstopNames()).judge(readings, touched));
    SettingsCheck settings = new SettingsCheck(profile, dialect);
    Map<String, StoredSettings.Value> stored = Map.of();
    if (!dialect.settingsQuery().isBlank()) {
      StoredSettings settingsReader = new StoredSettings(dialect);
      stored =
          settingsReader.read(
              askUntil(
                      session,
                      dialect.settingsQuery(),
                      lines -> !settingsReader.read(lines).isEmpty())
                  .lines());
      checks.addAll(settings.judge(stored));
    }
    List<String> says = List.of();
    if (!dialect.identityQuery().isBlank()) {
      says = ask(session, dialect.identityQuery()).lines();
      Map<String, String> unsaid = new LinkedHashMap<>(recorded);
      unsaid.keySet().removeAll(identity.keySet());
      checks.addAll(IdentityCheck.judge(identity, says));
      checks.addAll(IdentityCheck.recorded(unsaid, says));
    }
    List<String> toSend = settings.linesToSend(stored);
    return new ProofReport(
        profile.name(),
        session.name(),
        says,
        checks,
        toSend.isEmpty() ? "" : settings.explanation(),
        toSend);
  }

  private static Reply askUntil(LineSession session, String question, Predicate<List<String>> fits)
      throws LinkException, InterruptedException {
    Reply reply = ask(session, question);
    return reply.answered() && fits.test(reply.lines()) ? reply : ask(session, question);
  }

  private static Reply ask(LineSession session, String question)
      throws LinkException, InterruptedException {
    Reply reply = session.askAndWait(question);
    if (reply.outcome() == Reply.Outcome.LOST) {
      throw new LinkException(LinkException.Kind.LOST, reply.note());
    }
    return reply;
  }
}
