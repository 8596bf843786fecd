/**
 * Which macro of a firmware folder carries which profile value: kept, applied, learned.
 *
 * <p>May import: header, machine.
 */
package dev.gantrywright.names;
