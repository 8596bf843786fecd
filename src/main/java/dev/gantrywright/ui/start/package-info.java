/** The start page: the user's printers, the demo workshop, comparing two. */
package dev.gantrywright.ui.start;
