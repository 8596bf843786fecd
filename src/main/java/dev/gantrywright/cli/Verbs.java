package dev.gantrywright.cli;

import java.util.List;

/** The verbs of the command line, in the order in which help lists them. */
final class Verbs {
  private Verbs() {}

  static List<Object> all() {
    return List.of(
        new CheckVerb(),
        new NamesVerb(),
        new PatchVerb(),
        new MacrosVerb(),
        new ComputeVerb(),
        new BuildVerb(),
        new ImageVerb(),
        new LoadVerb(),
        new PortsVerb(),
        new WatchVerb(),
        new ProveVerb(),
        new HeatVerb(),
        new PracticeVerb(),
        new SheetVerb(),
        new HistoryVerb(),
        new FleetVerb());
  }
}
