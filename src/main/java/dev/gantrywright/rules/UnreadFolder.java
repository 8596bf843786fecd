package dev.gantrywright.rules;

/**
 * A firmware folder that was looked for and could not be read. The file system was asked when the
 * printer was opened; rules only see the answer.
 *
 * @param stated what the profile said then; null where the folder was named beside the profile
 * @param why what, where, what to do, in one line
 */
public record UnreadFolder(String stated, String why) {}
