/**
 * Runs the user's build command and reads compiler diagnostics.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.build;
