/**
 * The command line: one picocli class a verb; prints, never decides.
 *
 * <p>May import: everything of ours but the window.
 */
package dev.gantrywright.cli;
