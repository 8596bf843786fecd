package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The description of one controller board, as a {@code *.board.json} file holds it.
 *
 * @param mcu the part on the board
 * @param clockHz the clock that it runs at, Hz; null for the part's top clock
 * @param ports serial ports in the firmware's indexing
 * @param inputs endstop inputs by the name printed beside the socket
 * @param sockets driver sockets by name
 * @param outputs heater outputs by name
 * @param sensors temperature sensor inputs by name
 */
public record BoardSheet(
    Integer format,
    String name,
    String notes,
    String mcu,
    Double clockHz,
    List<BoardPort> ports,
    Map<String, BoardInput> inputs,
    Map<String, DriverSocket> sockets,
    Map<String, HeaterOutput> outputs,
    Map<String, SensorInput> sensors,
    BoardSupply supply,
    Loader loader,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public BoardSheet {
    ports = Kept.list(ports);
    inputs = Kept.map(inputs);
    sockets = Kept.map(sockets);
    outputs = Kept.map(outputs);
    sensors = Kept.map(sensors);
    supply = supply == null ? BoardSupply.NONE : supply;
    loader = loader == null ? Loader.NONE : loader;
    more = Kept.map(more);
  }
}
