package dev.gantrywright;

import dev.gantrywright.cli.Cli;
import dev.gantrywright.cli.ExitStatus;
import dev.gantrywright.cli.PlainMacros;
import dev.gantrywright.cli.TerminalJob;
import dev.gantrywright.ui.WorkbenchLauncher;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;

/** The entry point: a verb runs on the command line, no verb or a profile opens the window. */
public final class Gantrywright {
  private Gantrywright() {}

  public static void main(String[] args) {
    OptionalInt status = PlainMacros.run(args);
    if (status.isPresent()) {
      System.exit(status.getAsInt());
    }
    start(args);
  }

  /** A printer profile alone, as the desktop hands it over, opens the window on it. */
  private static Optional<Path> profile(String[] args) {
    return args.length == 1 && args[0].endsWith(".printer.json")
        ? Optional.of(Path.of(args[0]))
        : Optional.empty();
  }

  private static void start(String[] args) {
    Charset charset = Charset.defaultCharset();
    PrintWriter out = new dev.gantrywright.cli.BytePrinter(System.out, charset);
    PrintWriter err = new dev.gantrywright.cli.BytePrinter(System.err, charset);
    Optional<Path> profile = profile(args);
    if (args.length > 0 && profile.isEmpty()) {
      System.exit(Cli.run(out, err, args));
    }
    String missing = Display.ofThisProcess().missing();
    if (missing.isEmpty()) {
      WorkbenchLauncher.open(profile);
      System.exit(ExitStatus.FINE);
    }
    if (profile.isPresent()) {
      err.println(missing + ": try 'gantrywright check " + profile.get() + "'");
      err.flush();
      System.exit(ExitStatus.USAGE);
    }
    out.println(missing + ": the same job runs in the terminal");
    System.exit(new TerminalJob(out, err).run());
  }
}
