package dev.gantrywright.ui.state;

import dev.gantrywright.machine.BuiltImage;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What work at a station came to. It stands there for good; once the profile is another one it says
 * that it was done before that change.
 */
public final class Outcomes {
  private record Kept(StationState state, PrinterProfile on) {}

  private final Map<Stage, Kept> kept = new EnumMap<>(Stage.class);

  /** Work begins or goes on with this profile. */
  public void during(Stage stage, StationState state, PrinterProfile profile) {
    Kept before = kept.get(stage);
    boolean goesOn = before != null && before.state().equals(state);
    kept.put(stage, goesOn ? before : new Kept(state, plain(profile)));
  }

  /** Work that began with {@link #during} has ended. */
  public void ended(Stage stage, StationState state, PrinterProfile profile) {
    Kept before = kept.get(stage);
    kept.put(stage, new Kept(state, before == null ? plain(profile) : before.on()));
  }

  /** What the station shows; empty where nothing was done there. */
  public Optional<StationState> of(Stage stage, PrinterProfile now) {
    return Optional.ofNullable(kept.get(stage))
        .map(
            each ->
                each.on().equals(plain(now))
                    ? each.state()
                    : StationState.open("route.before", each.state().words()));
  }

  /** What a build itself writes into the profile is no edit. */
  private static PrinterProfile plain(PrinterProfile profile) {
    BuiltImage image = profile.build().image();
    if (image == null || image.bytes() == null && image.ramBytes() == null) {
      return profile;
    }
    try {
      return ProfileValues.with(profile, "build.image", null);
    } catch (ProfileProblem impossible) {
      return profile;
    }
  }
}
