package dev.gantrywright.board;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** A demo printer in a folder of its own, to be changed by a test like a user would. */
final class BenchPrinter {
  private static final JsonMapper JSON = JsonMapper.shared();

  private final Path file;

  private BenchPrinter(Path file) {
    this.file = file;
  }

  /**
   * Copies the demo workshop and puts the test firmware's sources into its firmware folder, so that
   * the folder builds for the emulated board; the printer is Heron.
   */
  static BenchPrinter in(Path folder) throws IOException {
    return building(folder, "heron", "Makefile", "out/*.bin");
  }

  /** The same with Guillemot and its AVR board. */
  static BenchPrinter avrIn(Path folder) throws IOException {
    return building(folder, "guillemot", "avr/Makefile", "out/*.hex");
  }

  private static BenchPrinter building(Path folder, String name, String recipe, String artefact)
      throws IOException {
    copy(Path.of("demo-profiles"), folder);
    copy(TestFirmware.SOURCES, folder.resolve("rookery-2.3").resolve("firmware"));
    BenchPrinter printer = new BenchPrinter(folder.resolve(name + ".printer.json"));
    List<String> command =
        List.of(
            "make",
            "-C",
            "firmware",
            "-f",
            recipe,
            "TARGET={target}",
            "CONFIG=../config",
            "OUT=../out");
    printer.set("build.command", JSON.valueToTree(command));
    printer.set("build.artefact", JSON.valueToTree(artefact));
    return printer;
  }

  Path file() {
    return file;
  }

  void set(String path, JsonNode value) throws IOException {
    ObjectNode root = (ObjectNode) JSON.readTree(Files.readAllBytes(file));
    ObjectNode at = root;
    String[] steps = path.split("\\.");
    for (int i = 0; i < steps.length - 1; i++) {
      at = at.withObject("/" + steps[i]);
    }
    at.set(steps[steps.length - 1], value);
    Files.writeString(file, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root));
  }

  void set(String path, String value) throws IOException {
    set(path, JSON.valueToTree(value));
  }

  void set(String path, boolean value) throws IOException {
    set(path, JSON.valueToTree(value));
  }

  void set(String path, int value) throws IOException {
    set(path, JSON.valueToTree(value));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path p : all.toList()) {
        Path target = to.resolve(from.relativize(p).toString());
        if (Files.isDirectory(p)) {
          Files.createDirectories(target);
        } else {
          Files.copy(p, target);
        }
      }
    }
  }
}
