/**
 * Lossless model of a C header and of an INI build-settings file: conditionals, settings, edits.
 * Bytes in, bytes out; never printed from a tree.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.header;
