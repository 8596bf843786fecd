/**
 * The practice board: a machine inside the program, built from plain data, so that everything works
 * and can be tried with no hardware. Its reply texts are its own.
 *
 * <p>May import: nothing of ours but the line's own types.
 */
package dev.gantrywright.link.practice;
