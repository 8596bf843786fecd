package dev.gantrywright.load;

import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.Platform;
import java.nio.file.Path;

/**
 * Makes the system forget the cached pages of a file, so that the next read comes from the card.
 *
 * <p>Source: POSIX posix_fadvise, POSIX_FADV_DONTNEED (4 on Linux).
 */
interface PageCache {
  /** Whether the pages were given up. */
  boolean forget(Path file);

  /** The C library's calls that are needed. */
  interface C extends Library {
    int open(String path, int flags);

    int posix_fadvise(int descriptor, long offset, long length, int advice);

    int close(int descriptor);
  }

  /** On 64-bit Linux the real thing; elsewhere nothing is forgotten, and the report says so. */
  static PageCache ofSystem() {
    if (!Platform.isLinux() || !Platform.is64Bit()) {
      return file -> false;
    }
    C c;
    try {
      c = Native.load("c", C.class);
    } catch (UnsatisfiedLinkError e) {
      return file -> false;
    }
    return file -> {
      int descriptor = c.open(file.toString(), 0);
      if (descriptor < 0) {
        return false;
      }
      try {
        return c.posix_fadvise(descriptor, 0, 0, 4) == 0;
      } finally {
        c.close(descriptor);
      }
    };
  }
}
