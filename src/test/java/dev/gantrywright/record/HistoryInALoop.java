package dev.gantrywright.record;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Random;
import tools.jackson.databind.json.JsonMapper;

/**
 * Appends events until it is killed. After each it prints the event's id, so that the one who kills
 * it knows what had reached the disk. Lines are long and written in small pieces, so that kills
 * fall into them: the system takes a short line in one piece, and only a power cut would tear it.
 */
final class HistoryInALoop {
  private static final int PIECE = 128;
  private static final int LONGEST = 1 << 17;

  private HistoryInALoop() {}

  public static void main(String[] args) throws Exception {
    HistoryFile history = new HistoryFile(Path.of(args[0]), PIECE);
    Random random = new Random(Long.parseLong(args[1]));
    int turn = 0;
    while (turn >= 0) {
      turn++;
      String profile = "profile " + turn % 5;
      String text = "t".repeat(random.nextInt(LONGEST));
      Event event =
          history.append(
              new Draft(
                  Instant.parse("2026-03-02T12:00:00Z").plusSeconds(turn),
                  EventKind.NOTE,
                  "",
                  new ProfileState(Sha256.of(profile.getBytes(StandardCharsets.UTF_8)), profile),
                  JsonMapper.shared().createObjectNode().put("text", text)));
      System.out.println(event.id());
      System.out.flush();
    }
  }
}
