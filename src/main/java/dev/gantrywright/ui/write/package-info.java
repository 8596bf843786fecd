/** The Write stage: the lines that change, all settings, the patched folder. */
package dev.gantrywright.ui.write;
