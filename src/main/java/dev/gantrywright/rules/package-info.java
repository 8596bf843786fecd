/**
 * The rule book: what a rule is, what it may see, what it reports, and how a book of rules is run.
 *
 * <p>One sub-package a family holds the rules themselves; {@code book} lists the families. May
 * import: machine, catalog, header, names, physics. Never reads a file that is not one of its own
 * pages, never changes what it checks.
 */
package dev.gantrywright.rules;
