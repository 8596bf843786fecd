/** Pictures drawn from the profile: machine plan, endstop circuit, drive train, trace, signs. */
package dev.gantrywright.ui.draw;
