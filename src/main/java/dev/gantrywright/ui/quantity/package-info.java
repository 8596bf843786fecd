/**
 * Numbers as people type them and as the window shows them: units, decimal comma, spaces in long
 * numbers. Knows no toolkit.
 */
package dev.gantrywright.ui.quantity;
