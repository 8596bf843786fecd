/**
 * The names of the open firmware folder: which macro carries which profile value, its boards and
 * its build targets. What the user settles here stays through learning.
 */
package dev.gantrywright.ui.names;
