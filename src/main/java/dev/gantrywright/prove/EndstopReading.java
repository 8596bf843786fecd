package dev.gantrywright.prove;

/**
 * One state as the machine reports it.
 *
 * @param name as reported
 * @param triggered whether the firmware takes it for touched
 * @param word the state word as reported
 */
public record EndstopReading(String name, boolean triggered, String word) {}
