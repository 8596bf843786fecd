/** The Check stage: every remark, worst first, with its remedies. */
package dev.gantrywright.ui.check;
