/**
 * Writers of what leaves the program: as-built sheet, SARIF, JUnit XML.
 *
 * <p>May import: every package below it.
 */
package dev.gantrywright.report;
