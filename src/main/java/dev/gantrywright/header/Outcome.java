package dev.gantrywright.header;

/** What became of one change. */
public sealed interface Outcome {

  /**
   * The change is in the plan.
   *
   * @param file path relative to the folder
   * @param line line of the directive before the plan, counted from 1
   * @param oldLine the directive's text before
   * @param newLine its text after; for an insertion the new line
   * @param note what the user should know, or empty
   */
  record Applied(String file, int line, String oldLine, String newLine, String note)
      implements Outcome {}

  /** Nothing to do: the folder says it already. */
  record AlreadySo(String file, int line) implements Outcome {}

  /** Not done; the reason is one clear line. */
  record Refused(String reason) implements Outcome {}
}
