package dev.gantrywright.load;

/** The steps of a verified copy, in order. */
public enum CopyStep {
  LOOK("looks at the card"),
  KEEP_PREVIOUS("keeps the previous image"),
  WRITE("writes beside the final name"),
  READ_BACK("reads it back and compares"),
  NAME("gives it its name"),
  READ_AGAIN("reads it again under its name"),
  DONE("done");

  private final String words;

  CopyStep(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
