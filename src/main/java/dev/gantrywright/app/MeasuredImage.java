package dev.gantrywright.app;

import dev.gantrywright.machine.BuiltImage;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;

/** What the last build left, kept in the profile so that the rules can speak of it. */
public final class MeasuredImage {
  private MeasuredImage() {}

  /** The profile with the measures of that image. */
  public static PrinterProfile into(PrinterProfile profile, BuiltImage image) {
    try {
      PrinterProfile sized = ProfileValues.with(profile, "build.image.bytes", image.bytes());
      PrinterProfile filled = ProfileValues.with(sized, "build.image.ramBytes", image.ramBytes());
      return ProfileValues.with(filled, "build.image.address", image.address());
    } catch (ProfileProblem tooLarge) {
      // Beyond what the field holds is beyond every controller: the judge has said so.
      return profile;
    }
  }
}
