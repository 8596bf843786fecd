/**
 * The printer profile and the board sheet: records, JSON reading and writing, schema, migrations,
 * field paths.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.machine;
