package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What a port of the board is. */
public enum PortKind {
  @JsonProperty("uart")
  UART,

  /** The native USB of the microcontroller. */
  @JsonProperty("usb")
  USB;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
