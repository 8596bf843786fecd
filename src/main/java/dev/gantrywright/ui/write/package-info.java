/** The Write stage: the lines that change side by side, all settings, the patched folder. */
package dev.gantrywright.ui.write;
