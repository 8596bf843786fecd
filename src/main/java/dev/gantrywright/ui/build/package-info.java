/** The Build stage. */
package dev.gantrywright.ui.build;
