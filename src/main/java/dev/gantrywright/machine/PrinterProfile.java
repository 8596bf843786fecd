package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * The description of one printer, as a {@code *.printer.json} file holds it.
 *
 * <p>A leaf that the file does not give is null; a section that it does not give is an empty
 * record, never null.
 *
 * @param format version of the file format, see {@link ProfileFormat}
 * @param axes by axis name, {@code x}, {@code y}, {@code z}, {@code e} …
 * @param endstops by axis end, {@code xMin}, {@code xMax} …
 * @param heaters by heater name, {@code hotend}, {@code bed} …
 * @param waivers by finding id and place, see {@link Waiver}
 * @param more keys that this version does not know; kept on saving
 */
public record PrinterProfile(
    Integer format,
    String name,
    String notes,
    BoardChoice board,
    Serial serial,
    Kinematics kinematics,
    Map<String, Axis> axes,
    Map<String, Endstop> endstops,
    Map<String, Heater> heaters,
    Supply supply,
    BuildSettings build,
    LinkSettings link,
    Map<String, Waiver> waivers,
    Printing printing,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public PrinterProfile {
    board = board == null ? BoardChoice.NONE : board;
    serial = serial == null ? Serial.NONE : serial;
    axes = Kept.map(axes);
    endstops = Kept.map(endstops);
    heaters = Kept.map(heaters);
    supply = supply == null ? Supply.NONE : supply;
    build = build == null ? BuildSettings.NONE : build;
    link = link == null ? LinkSettings.NONE : link;
    waivers = Kept.map(waivers);
    printing = printing == null ? Printing.NONE : printing;
    more = Kept.map(more);
  }
}
