/**
 * The record of the open printer in the window: its timeline, comparison with an earlier state, the
 * way back, and the as-built sheet.
 *
 * <p>May import: what {@code ui} may.
 */
package dev.gantrywright.ui.record;
