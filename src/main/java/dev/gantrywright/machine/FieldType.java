package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What a profile field holds. */
public enum FieldType {
  @JsonProperty("number")
  NUMBER,
  @JsonProperty("integer")
  INTEGER,
  @JsonProperty("flag")
  FLAG,
  @JsonProperty("text")
  TEXT,
  @JsonProperty("choice")
  CHOICE,
  @JsonProperty("list")
  LIST,
  @JsonProperty("map")
  MAP
}
