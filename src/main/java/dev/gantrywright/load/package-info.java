/**
 * Puts an image on a card or drive so that what lies there is proven to be the image, and
 * recognises whether the board's loader has taken it. Also what to watch when a command of the
 * user's does the loading. Nothing here decides whether an image is right.
 *
 * <p>May import: nothing of ours.
 */
package dev.gantrywright.load;
