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
 */
public record Heater(
    String sensor,
    Double pullUpOhms,
    Double minimum,
    Double maximum,
    Double watts,
    Double volts,
    Boolean protection,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public Heater {
    more = Kept.map(more);
  }
}
