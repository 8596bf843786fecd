package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What holds the input while nothing drives it. */
public enum InputPull {
  @JsonProperty("pull-up")
  PULL_UP,

  @JsonProperty("pull-down")
  PULL_DOWN,

  /** The sensor drives both levels. */
  @JsonProperty("driven")
  DRIVEN,

  /** Nothing: an open contact leaves the input floating. */
  @JsonProperty("none")
  NONE;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
