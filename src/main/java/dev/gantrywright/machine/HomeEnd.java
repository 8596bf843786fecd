package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** The end of an axis to which it homes. */
public enum HomeEnd {
  @JsonProperty("min")
  MIN,

  @JsonProperty("max")
  MAX;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
