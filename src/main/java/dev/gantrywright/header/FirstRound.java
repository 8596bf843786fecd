package dev.gantrywright.header;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * What the changes of the last plan asked of one folder as it was read, kept for the next plan: a
 * profile edit changes one of them, and the others ask the same again.
 */
final class FirstRound {
  /**
   * A change tried on the folder as it was read.
   *
   * @param newLine the line as it would read; null where nothing is edited or the edit was refused
   * @param line where it stands, counted from 1; 0 where nothing is edited
   */
  record Tried(Proposal proposal, String newLine, int line) {}

  private Map<Change, Tried> known = new HashMap<>();
  private Map<Change, Tried> used = new HashMap<>();
  private Map<String, SourceFile> files = Map.of();
  private Map<String, SourceFile> nextFiles = new HashMap<>();

  Tried tried(Change change, Function<Change, Tried> attempt) {
    Tried tried = known.get(change);
    if (tried == null) {
      tried = attempt.apply(change);
    }
    used.put(change, tried);
    return tried;
  }

  /** The file as read before where its bytes are the same again. */
  SourceFile file(String path, byte[] bytes) {
    SourceFile last = files.get(path);
    SourceFile file =
        last != null && Arrays.equals(last.bytes(), bytes) ? last : SourceFile.of(path, bytes);
    nextFiles.putIfAbsent(path, file);
    return file;
  }

  /** Forgets what this plan did not ask for. */
  void next() {
    known = used;
    used = new HashMap<>();
    files = nextFiles;
    nextFiles = new HashMap<>();
  }
}
