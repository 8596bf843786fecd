/**
 * Pseudo-terminals, where the system has them: a serial port that this program serves itself.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.link.pty;
