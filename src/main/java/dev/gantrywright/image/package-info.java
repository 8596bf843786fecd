/**
 * Firmware images: readers of raw binary, Intel HEX, S-record, ELF and UF2, the judge that holds an
 * image against a controller and its bootloader, and the picture of flash and RAM. Bytes come in;
 * nothing here opens a device or decides to load.
 *
 * <p>May import: catalog.
 */
package dev.gantrywright.image;
