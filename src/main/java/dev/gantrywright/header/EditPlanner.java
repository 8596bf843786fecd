package dev.gantrywright.header;

import java.util.List;

/**
 * Makes plan after plan for one folder, as a profile is edited. Each plan is the one that {@link
 * EditPlan#of} makes; what the changes of the plan before asked is not worked out again. Serves one
 * thread at a time.
 */
public final class EditPlanner {
  private final FirmwareFolder folder;
  private final KeptPlan kept = new KeptPlan();

  /** Plans for a folder. */
  public EditPlanner(FirmwareFolder folder) {
    this.folder = folder;
  }

  /** The folder that the plans are made for. */
  public FirmwareFolder folder() {
    return folder;
  }

  /** Works out a plan. */
  public EditPlan plan(List<Change> changes) {
    EditPlan plan = EditPlan.of(folder, changes, kept);
    kept.next();
    return plan;
  }
}
