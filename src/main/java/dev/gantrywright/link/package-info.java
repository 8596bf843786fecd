/**
 * Byte transports, line protocol, command safety and the practice board.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.link;
