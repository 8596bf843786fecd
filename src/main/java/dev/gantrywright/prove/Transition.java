package dev.gantrywright.prove;

/**
 * A change of one endstop.
 *
 * @param nanos when it was first seen, on the monotonic clock
 * @param triggered what it changed to
 */
public record Transition(long nanos, boolean triggered) {}
