package dev.gantrywright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Whether the streams of this process are terminals. */
final class Terminal {
  static final int OUT = 1;
  static final int ERR = 2;

  private Terminal() {}

  /** Whether a stream, by its number, is a terminal; false where the system does not tell. */
  static boolean is(int stream) {
    try {
      String target = Files.readSymbolicLink(Path.of("/proc/self/fd/" + stream)).toString();
      return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
    } catch (IOException | UnsupportedOperationException noSuchTable) {
      return false;
    }
  }
}
