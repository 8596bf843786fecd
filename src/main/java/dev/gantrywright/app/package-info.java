/**
 * The use cases that window and command line share: open, check, plan, export, build, load, prove,
 * report.
 *
 * <p>May import: every package below it.
 */
package dev.gantrywright.app;
