package dev.gantrywright.app;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The Harbour Street Workshop, which ships with the program: unpacked so that it can be edited. */
public final class DemoWorkshop {
  /** The printer that the first start shows. */
  public static final String FIRST_PRINTER = "heron.printer.json";

  private DemoWorkshop() {}

  /**
   * Unpacks the demo into a folder; a file that is already there stays as it is.
   *
   * @return the first printer's file
   */
  public static Path unpack(Path into) throws IOException {
    try {
      URI home = DemoWorkshop.class.getResource("/dev/gantrywright/demo/" + FIRST_PRINTER).toURI();
      if (home.getScheme().equals("jar")) {
        try (FileSystem jar = FileSystems.newFileSystem(home, Map.of())) {
          copy(jar.getPath("/dev/gantrywright/demo"), into);
        }
      } else {
        copy(Path.of(home).getParent(), into);
      }
    } catch (URISyntaxException impossible) {
      throw new IOException(impossible);
    }
    return into.resolve(FIRST_PRINTER);
  }

  private static void copy(Path from, Path into) throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(from)) {
      files = walk.filter(Files::isRegularFile).toList();
    }
    for (Path file : files) {
      Path target = into.resolve(from.relativize(file).toString());
      if (!Files.exists(target)) {
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }
}
