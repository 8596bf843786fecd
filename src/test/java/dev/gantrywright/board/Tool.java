package dev.gantrywright.board;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Outside programs that tests compare with. A missing one skips the test visibly; where the system
 * property {@code board.required} is true it fails instead.
 */
public final class Tool {
  private static final long LONGEST_SECONDS = 120;

  /** What a program printed, and its exit status. */
  public record Output(int exit, String out) {}

  private Tool() {}

  /** Call from {@code @BeforeEach} or the test itself. */
  public static void need(String... programs) {
    for (String program : programs) {
      if (present(program)) {
        continue;
      }
      if (Boolean.getBoolean("board.required")) {
        fail("%s is not installed, and board.required is true", program);
      }
      assumeTrue(false, program + " is not installed");
    }
  }

  /** The same for something that is no program, such as pseudo-terminals. */
  public static void needThat(boolean there, String what) {
    if (Boolean.getBoolean("board.required") && !there) {
      fail("%s not here, and board.required is true", what);
    }
    assumeTrue(there, what + " not here");
  }

  public static boolean present(String program) {
    return find(program).isPresent();
  }

  /** The program's path; where it is missing the test is skipped or fails as by {@link #need}. */
  public static Path path(String program) {
    need(program);
    return find(program).orElseThrow();
  }

  private static Optional<Path> find(String program) {
    String path = System.getenv().getOrDefault("PATH", "");
    return List.of((path + ":/usr/sbin:/sbin").split(":")).stream()
        .map(dir -> Path.of(dir, program))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** Runs a program, both streams together, in the C locale. */
  public static Output run(Path folder, String... command) {
    try {
      Path log = Files.createTempFile("tool", ".log");
      try {
        ProcessBuilder builder =
            new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(log.toFile());
        builder.environment().put("LC_ALL", "C");
        builder.environment().merge("PATH", ":/usr/sbin:/sbin", String::concat);
        Process process = builder.start();
        if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
          process.destroyForcibly();
          fail("%s did not end within %d s", command[0], LONGEST_SECONDS);
        }
        return new Output(process.exitValue(), Files.readString(log, StandardCharsets.ISO_8859_1));
      } finally {
        Files.deleteIfExists(log);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  /** As {@link #run}, and fails where the program does. */
  public static String mustRun(Path folder, String... command) {
    Output output = run(folder, command);
    if (output.exit() != 0) {
      fail("%s ended with %d: %s", String.join(" ", command), output.exit(), output.out());
    }
    return output.out();
  }
}
