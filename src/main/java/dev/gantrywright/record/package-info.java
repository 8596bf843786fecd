/**
 * The record of a printer: what was done with it, one event a line, in a file that only grows; and
 * the states that its profile went through.
 *
 * <p>May come in: profiles as text and tree, facts as JSON. What an event means is known to those
 * who write and read its facts; here nothing is known of exports, builds or proofs but their names.
 *
 * <p>May import: machine.
 */
package dev.gantrywright.record;
