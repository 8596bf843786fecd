/** The Load stage. */
package dev.gantrywright.ui.load;
