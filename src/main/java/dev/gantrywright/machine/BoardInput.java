package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One endstop input.
 *
 * @param pin the microcontroller's pin
 * @param toleranceVolts highest voltage that it bears, V
 * @param pull what the board fits
 * @param pullOhms the fitted resistor, Ω
 * @param interrupt whether the pin can raise an interrupt of its own
 * @param filterMicroseconds time constant of the fitted filter, µs
 */
public record BoardInput(
    String pin,
    Double toleranceVolts,
    InputPull pull,
    Double pullOhms,
    Boolean interrupt,
    Double filterMicroseconds,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public BoardInput {
    more = Kept.map(more);
  }
}
