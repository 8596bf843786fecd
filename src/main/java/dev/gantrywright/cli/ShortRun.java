package dev.gantrywright.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Tells the virtual machine that a run over many printers is short: a few seconds do not pay for
 * the second compiler, which takes one of two processors from the work all the while. The starter
 * script says the same as an option; see docs/decisions/a-short-run-has-one-compiler.md.
 */
final class ShortRun {
  /** Below, the second compiler hardly begins, and telling takes longer than it saves. */
  static final int LEAST = 500;

  /** Above, its better code has paid for itself before the end. */
  static final int MOST = 20_000;

  private static final String DIRECTIVE = "[{match: [\"*.*\"], c2: {Exclude: true}}]";

  private ShortRun() {}

  /**
   * Tells it in the background; a virtual machine that takes no such directive goes on as it is.
   */
  static void tell(int printers) {
    if (printers < LEAST || printers > MOST) {
      return;
    }
    Thread thread = new Thread(ShortRun::direct, "one compiler");
    thread.setDaemon(true);
    thread.start();
  }

  /** The virtual machine's answer; empty where it takes no directive. */
  static String direct() {
    try {
      Path file = Files.createTempFile("gantrywright", ".directives");
      try {
        Files.writeString(file, DIRECTIVE);
        return Bean.add(file);
      } finally {
        Files.deleteIfExists(file);
      }
    } catch (IOException | RuntimeException | LinkageError other) {
      return "";
    }
  }

  /** Apart, so that a runtime without the management module can load all else. */
  private static final class Bean {
    static String add(Path directives) {
      try {
        Object answer =
            ManagementFactory.getPlatformMBeanServer()
                .invoke(
                    new ObjectName("com.sun.management:type=DiagnosticCommand"),
                    "compilerDirectivesAdd",
                    new Object[] {new String[] {directives.toString()}},
                    new String[] {String[].class.getName()});
        return String.valueOf(answer).strip();
      } catch (JMException other) {
        return "";
      }
    }
  }
}
