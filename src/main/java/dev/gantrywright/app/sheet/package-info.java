/**
 * Gathers the as-built sheet of one printer: what its profile says, what the rule book finds, and
 * what its history holds. What has not been done is said plainly.
 *
 * <p>May import: what {@code app} may.
 */
package dev.gantrywright.app.sheet;
