/**
 * The trade's arithmetic as pure functions in SI units: steps/mm, UART divisors, driver current,
 * temperature sensors, power.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.physics;
