package dev.gantrywright.link.serial;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.LinkException.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.GroupPrincipal;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Optional;

/** Whether this user may open a port, and if not, what to do about it. */
final class PortAccess {
  /** EACCES of POSIX on Linux and macOS. */
  private static final int EACCES = 13;

  /** ERROR_FILE_NOT_FOUND of Windows. */
  private static final int FILE_NOT_FOUND = 2;

  private PortAccess() {}

  /** Refuses a path that does not exist, or that this user may not open. */
  static void require(String portName) throws LinkException {
    Optional<Path> device = device(portName);
    if (device.isEmpty()) {
      return;
    }
    if (!Files.exists(device.get())) {
      throw notFound(portName);
    }
    if (!Files.isReadable(device.get()) || !Files.isWritable(device.get())) {
      throw notAllowed(portName);
    }
  }

  /**
   * What an unsuccessful opening means. The library's error number may be left over from an earlier
   * call, so a device file that is there is never called missing.
   */
  static LinkException refused(String portName, int error) {
    Optional<Path> device = device(portName);
    boolean missing = device.isPresent() ? !Files.exists(device.get()) : error == FILE_NOT_FOUND;
    if (missing) {
      return notFound(portName);
    }
    if (error == EACCES && device.isPresent()) {
      return notAllowed(portName);
    }
    return new LinkException(
        Kind.BUSY,
        portName
            + " is in use"
            + PortHolder.of(portName).map(h -> " by " + h).orElse("")
            + " or does not take these settings: close the other program, or choose another port");
  }

  static LinkException notFound(String portName) {
    return new LinkException(
        Kind.NOT_FOUND,
        "there is no port '" + portName + "': plug the board in and look at the list of ports");
  }

  private static LinkException notAllowed(String portName) {
    String advice =
        group(portName)
            .map(
                g ->
                    "add yourself to the group '"
                        + g
                        + "' (sudo usermod -aG "
                        + g
                        + " \"$USER\"), then log in again")
            .orElse("ask the administrator for access to it");
    return new LinkException(
        Kind.NOT_ALLOWED, "you are not allowed to open " + portName + ": " + advice);
  }

  /** The group that owns the device file, on systems that have one. */
  static Optional<String> group(String portName) {
    return device(portName)
        .map(
            path -> {
              try {
                GroupPrincipal g = Files.readAttributes(path, PosixFileAttributes.class).group();
                return g.getName();
              } catch (IOException | UnsupportedOperationException e) {
                return null;
              }
            });
  }

  /** The device file, where ports are files. */
  static Optional<Path> device(String portName) {
    if (portName.startsWith("/")) {
      return Optional.of(Path.of(portName));
    }
    Path dev = Path.of("/dev");
    if (Files.isDirectory(dev, LinkOption.NOFOLLOW_LINKS) && portName.matches("[A-Za-z0-9._-]+")) {
      return Optional.of(dev.resolve(portName));
    }
    return Optional.empty();
  }
}
