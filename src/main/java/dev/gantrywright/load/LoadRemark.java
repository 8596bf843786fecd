package dev.gantrywright.load;

/**
 * What speaks against a card or a name.
 *
 * @param error true where loading would fail; false where it is only worth a look
 */
public record LoadRemark(boolean error, String id, String text, String todo) {}
