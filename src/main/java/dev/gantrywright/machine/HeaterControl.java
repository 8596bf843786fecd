package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How the firmware switches a heater. */
public enum HeaterControl {
  /** Proportional, by a controller that switches many times a second. */
  @JsonProperty("pid")
  PID,
  /** Full on below the wanted temperature, off above it. */
  @JsonProperty("bang-bang")
  BANG_BANG;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
