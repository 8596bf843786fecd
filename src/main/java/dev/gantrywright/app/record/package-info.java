/**
 * What goes into a printer's history, and what is read out of it again: the facts of each job as
 * JSON, the timeline, the comparison of states, the way back.
 *
 * <p>May import: what {@code app} may.
 */
package dev.gantrywright.app.record;
