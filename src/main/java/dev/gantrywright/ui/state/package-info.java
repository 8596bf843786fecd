/**
 * The view models: what the window shows and what its acts do, without a toolkit. Document → view
 * model → view; acts come back as calls.
 */
package dev.gantrywright.ui.state;
