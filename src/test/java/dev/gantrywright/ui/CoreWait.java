package dev.gantrywright.ui;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;

/**
 * How long the thread that made this could have run and had no core: the second figure of Linux's
 * {@code schedstat} (Documentation/scheduler/sched-stats.rst). What a host takes from a virtual
 * machine is not in it.
 */
final class CoreWait {
  private final RandomAccessFile file;
  private final byte[] text = new byte[100];

  CoreWait() {
    RandomAccessFile opened;
    try {
      opened = new RandomAccessFile("/proc/thread-self/schedstat", "r");
    } catch (IOException none) {
      opened = null;
    }
    file = opened;
  }

  /** Nanoseconds since the thread began; 0 where the system does not tell. */
  long nanos() {
    if (file == null) {
      return 0;
    }
    try {
      file.seek(0);
      int length = file.read(text);
      return Long.parseLong(
          new String(text, 0, length, StandardCharsets.US_ASCII).split(" ")[1].strip());
    } catch (IOException e) {
      return 0;
    }
  }
}
