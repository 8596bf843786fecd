/**
 * Verified copy of an image to a card or drive.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.load;
