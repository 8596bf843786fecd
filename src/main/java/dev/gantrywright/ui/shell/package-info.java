/** What stands around every stage: header, route, line strip, command palette, key map. */
package dev.gantrywright.ui.shell;
