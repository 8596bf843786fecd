package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How the motors move the head. */
public enum Kinematics {
  /** One motor group an axis. */
  @JsonProperty("cartesian")
  CARTESIAN,

  /** Two belts shared by X and Y: motor travel is x + y and x - y. */
  @JsonProperty("corexy")
  COREXY,

  /** Three vertical carriages. */
  @JsonProperty("delta")
  DELTA;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
