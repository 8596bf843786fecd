/**
 * Many printers at once: a folder of profiles is a fleet. Nothing here knows more of a printer than
 * its profile, its parts and its history say.
 *
 * <p>May import: what {@code app} may.
 */
package dev.gantrywright.app.fleet;
