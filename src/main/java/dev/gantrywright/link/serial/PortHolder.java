package dev.gantrywright.link.serial;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Which other program holds a port, where Linux shows it. */
final class PortHolder {
  private static final Path PROC = Path.of("/proc");

  private PortHolder() {}

  /** Name and number of a process that has the device open, this one left out. */
  static Optional<String> of(String portName) {
    Optional<Path> device = PortAccess.device(portName);
    if (device.isEmpty() || !Files.isDirectory(PROC.resolve("self"))) {
      return Optional.empty();
    }
    try (DirectoryStream<Path> processes = Files.newDirectoryStream(PROC, "[0-9]*")) {
      Path wanted = device.get().toRealPath();
      String self = String.valueOf(ProcessHandle.current().pid());
      for (Path process : processes) {
        if (!process.getFileName().toString().equals(self) && holds(process, wanted)) {
          return Optional.of(name(process));
        }
      }
    } catch (IOException e) {
      return Optional.empty();
    }
    return Optional.empty();
  }

  private static boolean holds(Path process, Path wanted) {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(process.resolve("fd"))) {
      for (Path file : files) {
        if (Files.isSymbolicLink(file) && wanted.equals(Files.readSymbolicLink(file))) {
          return true;
        }
      }
    } catch (IOException | SecurityException e) {
      // The process has ended, or belongs to somebody else.
      return false;
    }
    return false;
  }

  private static String name(Path process) {
    try {
      return Files.readString(process.resolve("comm")).strip()
          + " (process "
          + process.getFileName()
          + ")";
    } catch (IOException e) {
      return "process " + process.getFileName();
    }
  }
}
