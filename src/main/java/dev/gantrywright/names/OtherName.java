package dev.gantrywright.names;

/**
 * A runner-up for a field.
 *
 * @param confidence 0 to 1
 */
public record OtherName(
    String macro, Integer element, String file, Integer line, double confidence) {}
