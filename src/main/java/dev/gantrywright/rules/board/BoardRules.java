package dev.gantrywright.rules.board;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class BoardRules {
  private BoardRules() {}

  public static List<Check> all() {
    return List.of(
        new PartDiffersFromSheet(),
        new ConstantUnknown(),
        new ConstantMisspelt(),
        new ConstantNumberShared(),
        new ConstantForOtherPart(),
        new TargetForOtherFamily(),
        new TargetForSisterPart(),
        new TargetUnknown(),
        new TargetMisspelt(),
        new PartNotInCatalogue(),
        new ClockAbovePart(),
        new ImageExceedsFlash(),
        new DataExceedsRam(),
        new DataExceedsLargestBank(),
        new ImageStartDiffersFromLoader(),
        new OffsetBreaksVectorTable(),
        new OffsetBeyondFlash(),
        new ImageNameNotShort(),
        new ArtefactKindNotLoadable(),
        new PinUsedTwice(),
        new TargetNotStated(),
        new ConstantNotStated(),
        new CommandIgnoresTarget(),
        new SheetNotOpen(),
        new ArtefactKindUnknown());
  }
}
