/**
 * The window: JavaFX views, and view models that know no JavaFX control.
 *
 * <p>May import: everything of ours.
 */
package dev.gantrywright.ui;
