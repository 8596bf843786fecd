package dev.gantrywright.catalog;

/**
 * One stretch of RAM. Parts often have several that do not touch, so one size misleads.
 *
 * @param name the maker's name of the bank
 * @param base address of the first byte
 * @param bytes size in bytes
 * @param cpuOnly true where DMA cannot reach it
 */
public record RamBank(String name, long base, long bytes, boolean cpuOnly) {

  static RamBank of(Row row) {
    return new RamBank(
        row.text("name"), row.whole("base"), row.whole("bytes"), row.flag("cpuOnly", false));
  }

  /** The first address behind the bank, which is also the highest legal initial stack pointer. */
  public long end() {
    return base + bytes;
  }

  public boolean contains(long address) {
    return address >= base && address < end();
  }
}
