package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The GNU preprocessor, asked for the macros that are live at the end of a header. */
final class Gnu {
  private Gnu() {}

  /** What it answered: its own predefined lines taken out, sorted. */
  record Answer(int status, List<String> lines, String complaints) {
    /** It stops where a header is missing, and lists nothing. */
    boolean stopped() {
      return complaints.contains("compilation terminated");
    }
  }

  /** Skips the test, or fails it where {@code board.required} is true, unless the path is there. */
  static void require(Path path) {
    if (!Files.exists(path)) {
      if (Boolean.getBoolean("board.required")) {
        fail("%s is not installed, and board.required is true", path);
      }
      assumeTrue(false, path + " is not installed");
    }
  }

  static Answer macros(Path header, List<String> options) {
    List<String> command = new ArrayList<>(List.of("gcc", "-undef", "-E", "-dM"));
    command.addAll(options);
    command.add(header.toString());
    return run(command);
  }

  /** The macros of one name with their replacement, after a header was read. */
  static List<String> definitions(Path header, List<String> options) {
    return macros(header, options).lines();
  }

  static Set<String> predefined() {
    Answer bare = run(List.of("gcc", "-undef", "-E", "-dM", "-x", "c", "/dev/null"));
    return new TreeSet<>(bare.lines());
  }

  private static Answer run(List<String> command) {
    try {
      Path out = Files.createTempFile("macros", ".out");
      Path err = Files.createTempFile("macros", ".err");
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      int status = process.waitFor();
      String text = Files.readString(out, StandardCharsets.ISO_8859_1);
      String complaints = Files.readString(err, StandardCharsets.ISO_8859_1);
      Files.delete(out);
      Files.delete(err);
      return new Answer(status, text.lines().sorted().toList(), complaints);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** All headers below a folder, sorted. */
  static List<Path> headers(Path folder) {
    try (Stream<Path> walk = Files.walk(folder)) {
      return walk.filter(p -> p.toString().endsWith(".h") && Files.isRegularFile(p))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Lines of ISO-8859-1 text, sorted. */
  static List<String> sorted(byte[] listing) {
    return new String(listing, StandardCharsets.ISO_8859_1).lines().sorted().toList();
  }

  static byte[] resource(String name) {
    try (InputStream in = Gnu.class.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
