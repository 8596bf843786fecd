package dev.gantrywright.load;

/** What a loader does to the file once it has taken it. */
public enum LoaderSign {
  RENAMED,
  GONE,
  /** It leaves the card as it was. */
  NONE
}
