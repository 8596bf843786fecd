package dev.gantrywright.build;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds processes by a variable in their environment, where the system shows it (Linux: the {@code
 * environ} file of each process). Elsewhere it finds none, and only descendants are ended.
 */
final class MarkedProcesses {
  private final Path processes;

  MarkedProcesses(Path processes) {
    this.processes = processes;
  }

  static MarkedProcesses ofSystem() {
    return new MarkedProcesses(Path.of("/proc"));
  }

  /** The living processes that carry {@code NAME=value}. */
  List<ProcessHandle> with(String variable) {
    List<ProcessHandle> out = new ArrayList<>();
    if (!Files.isDirectory(processes)) {
      return out;
    }
    try (DirectoryStream<Path> all = Files.newDirectoryStream(processes, "[0-9]*")) {
      for (Path one : all) {
        if (carries(one.resolve("environ"), variable)) {
          ProcessHandle.of(Long.parseLong(one.getFileName().toString()))
              .filter(ProcessHandle::isAlive)
              .ifPresent(out::add);
        }
      }
    } catch (IOException e) {
      // Without the list only descendants are known.
      return out;
    }
    return out;
  }

  private static boolean carries(Path environ, String variable) {
    try {
      String text = new String(Files.readAllBytes(environ), StandardCharsets.ISO_8859_1);
      return text.startsWith(variable + "\0") || text.contains("\0" + variable + "\0");
    } catch (IOException e) {
      // Another user's process, or one that has just ended.
      return false;
    }
  }
}
