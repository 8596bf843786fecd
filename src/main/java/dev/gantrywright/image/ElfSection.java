package dev.gantrywright.image;

/**
 * A section that takes memory on the controller.
 *
 * @param name as in the file
 * @param address where it stands while the program runs
 * @param loadAddress where its bytes are stored; the same as address for what is not stored
 * @param size in bytes
 * @param stored whether the image carries its bytes (false: cleared at start, like .bss)
 * @param writable whether the program may write it
 * @param code whether it holds instructions
 */
public record ElfSection(
    String name,
    long address,
    long loadAddress,
    long size,
    boolean stored,
    boolean writable,
    boolean code) {}
