/** The Prove stage: the line, endstops expected against seen, the trace, the proof. */
package dev.gantrywright.ui.prove;
