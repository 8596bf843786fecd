/**
 * Readers and judges of firmware images.
 *
 * <p>May import: catalog.
 */
package dev.gantrywright.image;
