package dev.gantrywright.load;

import java.nio.file.Path;

/**
 * A mounted drive.
 *
 * @param root where it is mounted
 * @param device what the system calls it
 * @param fileSystem as the system names it, lower case: {@code vfat}, {@code exfat}, {@code ntfs}
 * @param removable whether it can be taken out: cards, sticks, boards that show themselves as one
 * @param readOnly whether it is mounted so that nothing can be written
 * @param totalBytes size; 0 where unknown
 * @param freeBytes room; 0 where unknown
 */
public record Drive(
    Path root,
    String device,
    String fileSystem,
    boolean removable,
    boolean readOnly,
    long totalBytes,
    long freeBytes) {
  /** FAT12, FAT16 or FAT32, whatever the system calls it. */
  public boolean fat() {
    return switch (fileSystem) {
      case "vfat", "msdos", "fat", "fat12", "fat16", "fat32", "msdosfs" -> true;
      default -> false;
    };
  }
}
