package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One heater with its temperature sensor.
 *
 * @param sensor id of the sensor in the catalogue
 * @param pullUpOhms resistor above the sensor, Ω
 * @param minimum lowest temperature taken for a sound sensor, °C
 * @param maximum highest temperature allowed, °C
 * @param watts power at {@code volts}, W
 * @param volts rated voltage, V
 * @param protection whether runaway protection is on
 * @param output the board's name of the output that switches it
 * @param input the board's name of the input that reads its sensor
 * @param rated highest temperature that its maker allows, °C
 * @param wire cross-section of its wires, mm²
 * @param wireLength length of the cable, one way, m
 * @param earthed whether its metal is bonded to protective earth
 * @param relayAmps rating of the relay between output and heater, A; null where the output switches
 *     it itself
 * @param cutoff temperature of the fitted thermal cut-off, °C; null where none is fitted
 * @param ohms resistance measured cold between its two wires, Ω; null where it was not measured
 */
public record Heater(
    String sensor,
    Double pullUpOhms,
    Double minimum,
    Double maximum,
    Double watts,
    Double volts,
    Boolean protection,
    String output,
    String input,
    Double rated,
    HeaterControl control,
    Double wire,
    Double wireLength,
    Boolean earthed,
    Double relayAmps,
    Double cutoff,
    Double ohms,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public Heater {
    more = Kept.map(more);
  }
}
