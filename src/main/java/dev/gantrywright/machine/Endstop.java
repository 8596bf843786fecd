package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The endstop at one end of an axis.
 *
 * @param fitted whether there is one
 * @param contact at rest
 * @param input what holds the input on the board
 * @param voltage highest voltage that the sensor puts on the input, V
 * @param pin the board's name of the input pin
 * @param inverted what the firmware is told so that it reads triggered exactly when touched: with a
 *     plain input that reads high as triggered, a contact that pulls the pin low when pressed needs
 *     true
 * @param pullUp whether the firmware switches on the microcontroller's own pull-up
 * @param probe whether it feels the bed itself rather than the end of an axis
 * @param probeOffset height of the nozzle above the bed when it triggers, mm
 * @param interrupt whether the firmware watches it by a pin interrupt
 */
public record Endstop(
    Boolean fitted,
    Contact contact,
    SensorKind sensor,
    InputPull input,
    Double voltage,
    String pin,
    Boolean inverted,
    Boolean pullUp,
    Boolean probe,
    Double probeOffset,
    Boolean interrupt,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  static final Endstop NONE =
      new Endstop(null, null, null, null, null, null, null, null, null, null, null, null);

  public Endstop {
    more = Kept.map(more);
  }
}
