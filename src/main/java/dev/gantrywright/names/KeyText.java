package dev.gantrywright.names;

/**
 * One value of the build settings: a key, or a macro that a key's flags define with {@code -D}.
 *
 * @param define whether it is such a macro
 */
record KeyText(
    String file,
    int line,
    String section,
    String key,
    String value,
    String comment,
    boolean define) {}
