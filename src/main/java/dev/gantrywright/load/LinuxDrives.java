package dev.gantrywright.load;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Drives on Linux.
 *
 * <p>Source: proc(5), {@code /proc/self/mountinfo}; sysfs, {@code /sys/dev/block} and the {@code
 * removable} attribute of a block device.
 */
final class LinuxDrives implements Drives {
  private static final Set<String> NOT_DRIVES = Set.of("loop", "ram", "zram", "dm", "md");

  private final Path mountInfo;
  private final Path blockDevices;

  LinuxDrives(Path mountInfo, Path blockDevices) {
    this.mountInfo = mountInfo;
    this.blockDevices = blockDevices;
  }

  @Override
  public List<Drive> now() throws IOException {
    List<Drive> out = new ArrayList<>();
    for (String line : Files.readAllLines(mountInfo)) {
      Drive drive = read(line);
      if (drive != null) {
        out.add(drive);
      }
    }
    return out;
  }

  /** {@code id parent major:minor root mount options … - type source super-options}. */
  private Drive read(String line) {
    String[] halves = line.split(" - ", 2);
    if (halves.length < 2) {
      return null;
    }
    String[] left = halves[0].split(" ");
    String[] right = halves[1].split(" ");
    boolean device = right.length >= 3 && right[1].startsWith("/dev/");
    if (left.length < 6
        || !device
        || NOT_DRIVES.stream().anyMatch(right[1].substring(5)::startsWith)) {
      return null;
    }
    Path root = Path.of(unescaped(left[4]));
    boolean readOnly = List.of(left[5].split(",")).contains("ro");
    long total = 0;
    long free = 0;
    try {
      total = Files.getFileStore(root).getTotalSpace();
      free = Files.getFileStore(root).getUsableSpace();
    } catch (IOException e) {
      // A drive that is being pulled out: its size is not known any more.
      total = 0;
    }
    return new Drive(root, right[1], right[0], removable(left[2]), readOnly, total, free);
  }

  /** Says the device so, or hangs it on USB or a card slot. */
  private boolean removable(String number) {
    try {
      Path device = blockDevices.resolve(number).toRealPath();
      String path = device.toString();
      if (path.contains("/usb") || path.contains("/mmc")) {
        return true;
      }
      for (Path p = device; p != null; p = p.getParent()) {
        Path flag = p.resolve("removable");
        if (Files.isRegularFile(flag)) {
          return Files.readString(flag).strip().equals("1");
        }
      }
      return false;
    } catch (IOException e) {
      return false;
    }
  }

  /** Blanks and the like stand as octal numbers. */
  private static String unescaped(String text) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) == '\\' && text.substring(i).matches("\\\\[0-7]{3}.*")) {
        out.append((char) Integer.parseInt(text.substring(i + 1, i + 4), 8));
        i += 3;
      } else {
        out.append(text.charAt(i));
      }
    }
    return out.toString();
  }
}
