package dev.gantrywright.rules.endstops;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class EndstopsRules {
  private EndstopsRules() {}

  public static List<Check> all() {
    return List.of(
        new PolarityReversed(),
        new InputFloats(),
        new PullsOppose(),
        new VoltageAbovePin(),
        new ContactHidesBrokenWire(),
        new InputShared(),
        new HomesToUnfittedEnd(),
        new SecondEndstopIdle(),
        new ProbeOffsetUnstated(),
        new InterruptNotOnPin(),
        new FilterDelaysStop(),
        new InputNotOnBoard(),
        new PullDiffersFromBoard(),
        new SensorMatchesPullLevel(),
        new SensorVoltageUnstated(),
        new HighLevelTooLow(),
        new ToleranceLostWithPull(),
        new HomingEndNotStated(),
        new PolarityNotStated(),
        new ContactNotStated(),
        new EndstopWithoutAxis(),
        new ProbeBelowNozzle(),
        new InputNotStated(),
        new InterruptWithoutFilter(),
        new PullUpsInParallel(),
        new ThreeWireVoltageUnusual(),
        new InterruptLineShared());
  }
}
