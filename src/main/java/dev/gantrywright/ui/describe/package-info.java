/** The Describe stage: forms by part of the machine, derived values, pictures. */
package dev.gantrywright.ui.describe;
