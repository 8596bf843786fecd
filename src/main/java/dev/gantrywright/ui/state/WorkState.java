package dev.gantrywright.ui.state;

/** What a build or a copy says on its station; null where it says nothing of its own. */
public final class WorkState {
  private WorkState() {}

  public static StationState of(BuildState state) {
    return switch (state.kind()) {
      case RUNNING -> StationState.open("build.running");
      case BUILT -> StationState.settled("route.built");
      case REFUSED -> error("route.badImage");
      case FAILED -> error("route.buildFailed");
      default -> null;
    };
  }

  public static StationState of(LoadState state) {
    return switch (state.kind()) {
      case COPYING -> StationState.open("load.copying");
      case FLASHING -> StationState.open("load.flashing");
      case COPIED -> StationState.open("route.onCard");
      case FLASHED -> StationState.open("route.flashed");
      case LOADED -> StationState.settled("route.loaded");
      case FAILED -> error("route.loadFailed");
      default -> null;
    };
  }

  private static StationState error(String key) {
    return StationState.of(StationState.Sign.ERROR, 0, key);
  }
}
