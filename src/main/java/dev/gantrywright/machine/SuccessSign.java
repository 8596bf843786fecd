package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What the loader does to the image file once it is loaded. */
public enum SuccessSign {
  @JsonProperty("renamed")
  RENAMED,

  @JsonProperty("gone")
  GONE,

  @JsonProperty("none")
  NONE;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
