package dev.gantrywright;

import dev.gantrywright.cli.Cli;
import dev.gantrywright.cli.ExitStatus;
import dev.gantrywright.cli.PlainMacros;
import dev.gantrywright.cli.TerminalJob;
import dev.gantrywright.ui.WorkbenchLauncher;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Optional;
import java.util.OptionalInt;

/** The entry point: a verb runs on the command line, no verb opens the window. */
public final class Gantrywright {
  private Gantrywright() {}

  public static void main(String[] args) {
    OptionalInt status = PlainMacros.run(args);
    if (status.isPresent()) {
      System.exit(status.getAsInt());
    }
    start(args);
  }

  private static void start(String[] args) {
    Charset charset = Charset.defaultCharset();
    PrintWriter out = new dev.gantrywright.cli.BytePrinter(System.out, charset);
    PrintWriter err = new dev.gantrywright.cli.BytePrinter(System.err, charset);
    if (args.length > 0) {
      System.exit(Cli.run(out, err, args));
    }
    String missing = Display.ofThisProcess().missing();
    if (missing.isEmpty()) {
      WorkbenchLauncher.open(Optional.empty());
      System.exit(ExitStatus.FINE);
    }
    out.println(missing + ": the same job runs in the terminal");
    System.exit(new TerminalJob(out, err).run());
  }
}
