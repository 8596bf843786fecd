package dev.gantrywright.image;

import java.util.List;
import java.util.Optional;

/**
 * What the judge says of an image.
 *
 * @param examination what was looked at
 * @param remarks worst first
 * @param picture flash and RAM, filled
 */
public record Verdict(Examination examination, List<Remark> remarks, MemoryPicture picture) {
  public Verdict {
    remarks = List.copyOf(remarks);
  }

  /** Whether an error stands against loading. */
  public boolean refused() {
    return remarks.stream().anyMatch(r -> r.level() == Level.ERROR);
  }

  /**
   * Whether loading may go on.
   *
   * @param reason why the errors are overridden; empty where they are not
   * @return empty where it may; else the one line that says why not
   */
  public Optional<String> refusal(Optional<String> reason) {
    if (!refused() || reason.filter(r -> r.strip().length() >= 3).isPresent()) {
      return Optional.empty();
    }
    Remark first = remarks.get(0);
    return Optional.of(
        "load refused: "
            + first.text()
            + " "
            + first.todo()
            + " To load all the same, give a reason.");
  }
}
