package dev.gantrywright.load;

/**
 * A sentence that must be typed as it stands before something is lost for good.
 *
 * @param lost what is lost
 * @param sentence what to type
 */
public record TypedConfirmation(String lost, String sentence) {
  static TypedConfirmation wholeChip(String boardName, String word) {
    String board = boardName.isBlank() ? "this board" : boardName;
    return new TypedConfirmation(
        "'"
            + word
            + "' erases the whole chip: its bootloader, the firmware that is on it, and every "
            + "stored setting and calibration are lost. Without a bootloader the card does not load "
            + "any more; a programmer is then needed to bring it back.",
        "erase everything on " + board);
  }

  /** Whether it was typed; blanks around it and letter case do not count. */
  public boolean typed(String text) {
    return text != null && text.strip().replaceAll("\\s+", " ").equalsIgnoreCase(sentence);
  }
}
