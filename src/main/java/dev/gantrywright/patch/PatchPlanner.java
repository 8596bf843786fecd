package dev.gantrywright.patch;

import dev.gantrywright.header.EditPlanner;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;

/**
 * Makes plan after plan for one folder and name map while a profile is edited. Each is the plan
 * that {@link PatchPlan#of} makes; what did not change since the plan before is not worked out
 * again. Serves one thread at a time.
 */
public final class PatchPlanner {
  private final NameMap map;
  private final MappedPlaces places;
  private final EditPlanner edits;
  private ProfileWishes asked;
  private String name;
  private PatchPlan last;

  /** Plans what profiles ask of a folder through its name map. */
  public PatchPlanner(NameMap map, FirmwareFolder folder) {
    this.map = map;
    this.places = new MappedPlaces(folder);
    this.edits = new EditPlanner(folder);
  }

  /** Whether it plans for this map and this folder, read at this moment. */
  public boolean serves(NameMap otherMap, FirmwareFolder otherFolder) {
    return map == otherMap && places.folder() == otherFolder;
  }

  /** The plan for a profile; the same as before where the profile asks for the same. */
  public PatchPlan plan(PrinterProfile profile) {
    ProfileWishes now = ProfileWishes.of(profile, map, places);
    String title = profile.name() == null ? "" : profile.name();
    if (last == null || !now.same(asked) || !title.equals(name)) {
      last = PatchPlan.of(places.folder(), title, now, edits::plan);
      asked = now;
      name = title;
    }
    return last;
  }
}
