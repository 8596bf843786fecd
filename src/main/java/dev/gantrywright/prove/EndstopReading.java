package dev.gantrywright.prove;

/**
 * One state as the machine reports it.
 *
 * @param name as reported
 * @param triggered whether the firmware reads it as triggered
 * @param word the state word as reported
 */
public record EndstopReading(String name, boolean triggered, String word) {}
