/**
 * The rule book that ships, put together from the families. Knows every family; no family knows it.
 *
 * <p>May import: the families and the rule book's own types.
 */
package dev.gantrywright.rules.book;
