/**
 * Serial ports of this computer: opening them, listing them, what they probably are.
 *
 * <p>May import: nothing of ours but the line's own types.
 */
package dev.gantrywright.link.serial;
