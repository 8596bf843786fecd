package dev.gantrywright.link.practice;

/**
 * A heater as a first-order lag with dead time.
 *
 * @param name heater, such as {@code hotend}
 * @param ambient temperature at rest, °C
 * @param gain rise at full power after a long time, K
 * @param lagSeconds time constant, s
 * @param deadSeconds time before the sensor notices, s
 */
public record ThermalPlant(
    String name, double ambient, double gain, double lagSeconds, double deadSeconds) {}
