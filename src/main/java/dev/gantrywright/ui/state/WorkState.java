package dev.gantrywright.ui.state;

/** What a build or a copy says on its station; null where it says nothing of its own. */
public final class WorkState {
  private WorkState() {}

  public static StationState of(BuildState state) {
    return switch (state.kind()) {
      case RUNNING -> StationState.open(Texts.of("build.running"));
      case BUILT -> StationState.settled(Texts.of("route.built"));
      case REFUSED -> error("route.badImage");
      case FAILED -> error("route.buildFailed");
      default -> null;
    };
  }

  public static StationState of(LoadState state) {
    return switch (state.kind()) {
      case COPYING -> StationState.open(Texts.of("load.copying"));
      case FLASHING -> StationState.open(Texts.of("load.flashing"));
      case COPIED -> StationState.open(Texts.of("route.onCard"));
      case FLASHED -> StationState.open(Texts.of("route.flashed"));
      case LOADED -> StationState.settled(Texts.of("route.loaded"));
      case FAILED -> error("route.loadFailed");
      default -> null;
    };
  }

  private static StationState error(String key) {
    return new StationState(StationState.Sign.ERROR, 0, Texts.of(key));
  }
}
