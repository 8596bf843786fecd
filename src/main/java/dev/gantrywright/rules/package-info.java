/**
 * The rule book: a class, a catalogue line and a page for each rule.
 *
 * <p>May import: machine, catalog, header, names, physics.
 */
package dev.gantrywright.rules;
