/**
 * Runs the user's build command and reads what compilers, linkers and make say. The command is the
 * user's own; nothing here knows a build system or a firmware.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.build;
