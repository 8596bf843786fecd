/**
 * From a profile and a name map to a plan of edits; unified diff; the patched folder.
 *
 * <p>May import: header, names, machine.
 */
package dev.gantrywright.patch;
