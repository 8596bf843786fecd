package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What turns a motor's rotation into travel. */
public enum DriveKind {
  /** Toothed belt on a pulley. */
  @JsonProperty("belt")
  BELT,

  /** Lead screw or ball screw. */
  @JsonProperty("screw")
  SCREW,

  /** A wheel that grips by its circumference. */
  @JsonProperty("gear")
  GEAR;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
