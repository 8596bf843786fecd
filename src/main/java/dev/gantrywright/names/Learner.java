package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import java.util.List;

/**
 * Learns which macro of a firmware folder carries which profile value. Nothing of any firmware is
 * known beforehand: words of the trade, the shape of values, comments and neighbours decide.
 */
public final class Learner {
  private final TradeWords trade = TradeWords.read();
  private final List<LearnableField> fields = LearnableField.all();
  private final McuNames mcus;

  /**
   * A learner.
   *
   * @param mcus the microcontrollers that may be named beside boards and targets
   */
  public Learner(McuNames mcus) {
    this.mcus = mcus;
  }

  /** Learns a folder's names from nothing. */
  public NameMap learn(FirmwareFolder folder) {
    return learn(folder, NameMap.EMPTY);
  }

  /**
   * Learns a folder's names anew; what the user set in the earlier map stays, with its place
   * brought up to date.
   */
  public NameMap learn(FirmwareFolder folder, NameMap earlier) {
    return study(folder, LearningWatch.NONE).map(earlier);
  }

  /**
   * Reads a folder for learning, once; names can then be learned from it, and places in it chosen,
   * as often as the user changes something.
   *
   * @throws LearningWatch.LearningStopped where the watch ends it
   */
  public FolderStudy study(FirmwareFolder folder, LearningWatch watch) {
    return new FolderStudy(folder, trade, fields, mcus, watch);
  }
}
