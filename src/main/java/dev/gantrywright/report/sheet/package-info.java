/**
 * The as-built sheet as a document of plain parts, and its two writers: HTML in one file, and
 * tagged PDF. The same parts give the same bytes; the date is one of the parts.
 *
 * <p>May import: what {@code report} may. What the parts say is decided by the caller.
 */
package dev.gantrywright.report.sheet;
