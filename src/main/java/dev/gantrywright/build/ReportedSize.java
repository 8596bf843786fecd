package dev.gantrywright.build;

import java.util.OptionalLong;

/**
 * Memory use that a build printed.
 *
 * @param region the memory region or section group: {@code FLASH}, {@code text}, {@code Program}
 * @param usedBytes bytes taken
 * @param regionBytes bytes that there are, where the output says so
 */
public record ReportedSize(String region, long usedBytes, OptionalLong regionBytes) {}
