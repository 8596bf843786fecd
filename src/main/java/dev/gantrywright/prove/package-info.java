/**
 * From what the machine answers to a verdict: endstop replies, trace, touch test, settings
 * comparison, calibration.
 *
 * <p>May import: link, machine.
 */
package dev.gantrywright.prove;
