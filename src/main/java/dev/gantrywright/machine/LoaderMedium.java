package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Where the board's loader takes its image from. */
public enum LoaderMedium {
  @JsonProperty("card")
  CARD,

  /** A drive that the loader shows over USB. */
  @JsonProperty("uf2")
  UF2,

  /** USB device firmware upgrade class. */
  @JsonProperty("usb-dfu")
  USB_DFU,

  @JsonProperty("serial")
  SERIAL;

  /** As files, messages and the command line spell it. */
  public String word() {
    return Words.of(this);
  }
}
