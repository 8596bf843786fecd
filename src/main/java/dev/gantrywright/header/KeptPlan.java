package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What the last plan of one folder came to, kept for the next plan: a profile edit changes one of
 * its changes, and the others ask the same again and leave the folder as they left it.
 */
final class KeptPlan {
  /**
   * A change tried on the folder as it was read.
   *
   * @param newLine the line as it would read; null where nothing is edited or the edit was refused
   * @param line where it stands, counted from 1; 0 where nothing is edited
   */
  record Tried(Proposal proposal, String newLine, int line) {}

  private Map<Change, Tried> known = new HashMap<>();
  private Map<Change, Tried> used = new HashMap<>();
  private List<FirmwareFolder> rounds = List.of();
  private List<FirmwareFolder> nextRounds = new ArrayList<>();

  /** What a change comes to in the first round, tried only if the plan before did not. */
  Tried tried(Change change, Function<Change, Tried> attempt) {
    Tried tried = known.get(change);
    if (tried == null) {
      tried = attempt.apply(change);
    }
    used.put(change, tried);
    return tried;
  }

  /** The folder after one more round; what the same round of the plan before left alike is kept. */
  FirmwareFolder round(FirmwareFolder folder, Map<String, byte[]> changed) {
    int number = nextRounds.size();
    FirmwareFolder like = number < rounds.size() ? rounds.get(number) : folder;
    FirmwareFolder result = folder.with(changed, like);
    nextRounds.add(result);
    return result;
  }

  /** Forgets what this plan did not ask for. */
  void next() {
    known = used;
    used = new HashMap<>();
    rounds = nextRounds;
    nextRounds = new ArrayList<>();
  }
}
