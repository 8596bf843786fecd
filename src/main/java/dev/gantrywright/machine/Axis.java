package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * One axis.
 *
 * @param travelMin lowest position, mm
 * @param travelMax highest position, mm
 * @param stepsPerMm microsteps for one millimetre
 * @param maxSpeed mm/s
 * @param acceleration mm/s²
 * @param directionInverted true where the firmware must turn the motor the other way
 * @param armLength of a delta printer's column: its arm from joint to joint, mm
 */
public record Axis(
    Double travelMin,
    Double travelMax,
    Double stepsPerMm,
    Double maxSpeed,
    Double acceleration,
    Boolean directionInverted,
    Homing homing,
    Motor motor,
    Driver driver,
    Drive drive,
    Double armLength,
    @JsonAnySetter @JsonAnyGetter Map<String, JsonNode> more) {
  public Axis {
    homing = homing == null ? Homing.NONE : homing;
    motor = motor == null ? Motor.NONE : motor;
    driver = driver == null ? Driver.NONE : driver;
    drive = drive == null ? Drive.NONE : drive;
    more = Kept.map(more);
  }
}
