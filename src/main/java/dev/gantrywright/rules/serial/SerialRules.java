package dev.gantrywright.rules.serial;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class SerialRules {
  private SerialRules() {}

  public static List<Check> all() {
    return List.of(
        new PortNotRouted(),
        new PortIsNoUsb(),
        new PortIsNoUart(),
        new PartHasNoUsb(),
        new BaudOutOfTolerance(),
        new BaudNeedsDoubleSpeed(),
        new ConsoleBaudDiffers(),
        new SecondPortIsFirst(),
        new SecondPortNotRouted(),
        new PortSharesDriverUart(),
        new FrameNotEightNone(),
        new LineSlowerThanSegments(),
        new BaudUnusual(),
        new PortNotStated(),
        new BaudNotStated(),
        new UartAbsentFromPart(),
        new BaudBeyondRecommendation());
  }
}
