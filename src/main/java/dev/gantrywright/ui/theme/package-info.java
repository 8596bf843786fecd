/** Tones, type and spacing: one set of tokens for light and dark, and the bundled fonts. */
package dev.gantrywright.ui.theme;
