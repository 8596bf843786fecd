/**
 * Facts about parts: microcontrollers, driver ICs, motion parts, sensors. Data files with a source
 * on each row; the classes only read them.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.catalog;
