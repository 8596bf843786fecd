package dev.gantrywright.rules.motion;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class MotionRules {
  private MotionRules() {}

  public static List<Check> all() {
    return List.of(
        new StepsDisagreeWithDrive(),
        new LayerBetweenFullSteps(),
        new LayerFinerThanSteps(),
        new StepRateExceedsProcessor(),
        new StepRateExceedsDriver(),
        new SpeedOutOfReach(),
        new HomingOverrun(),
        new TravelShortOfBed(),
        new TravelReversed(),
        new CrossedBeltPairUnequal(),
        new ColumnUnequal(),
        new ColumnDirectionsDiffer(),
        new StepsDriftedFromDrive(),
        new LeadUnusual(),
        new PulleyTooSmall(),
        new BeltPitchUnknown(),
        new MotorStepsUnusual(),
        new AxisAbsent(),
        new CrossedBeltLimitsDiffer(),
        new HomingAboveTopSpeed(),
        new HomingTakesLong(),
        new HomingSpeedNotStated(),
        new TravelFarBeyondBed(),
        new ResolutionCoarse(),
        new PrintingSpeedAboveAxis(),
        new AccelerationImplausible(),
        new ScrewTurnsFast(),
        new DriveIncomplete(),
        new StepsNotStated(),
        new FeedAxisHomes(),
        new RampTimeUnusual(),
        new HomingFarBelowTopSpeed(),
        new FeedImplausiblyFast(),
        new CrossingTakesLong(),
        new HeightUnlikeBed(),
        new LayerHeightUnusual(),
        new PrintingSpeedUnusual(),
        new ArmsUnequal(),
        new ColumnsHomeDown());
  }
}
