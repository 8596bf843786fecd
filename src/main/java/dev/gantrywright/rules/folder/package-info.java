/**
 * Rules of the folder family: one class a rule, listed in {@link
 * dev.gantrywright.rules.folder.FolderRules}.
 *
 * <p>May import: the rule book's own types, machine, catalog, header, names, physics. No rule knows
 * another.
 */
package dev.gantrywright.rules.folder;
