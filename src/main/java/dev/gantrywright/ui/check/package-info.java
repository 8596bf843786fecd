/** The Check stage: every note, worst first, with its remedies. */
package dev.gantrywright.ui.check;
