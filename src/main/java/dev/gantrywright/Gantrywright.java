package dev.gantrywright;

import dev.gantrywright.cli.BytePrinter;
import dev.gantrywright.cli.Cli;
import java.nio.charset.Charset;

/** The entry point: a verb runs on the command line, no verb opens the window. */
public final class Gantrywright {
  private Gantrywright() {}

  public static void main(String[] args) {
    Charset charset = Charset.defaultCharset();
    BytePrinter out = new BytePrinter(System.out, charset);
    BytePrinter err = new BytePrinter(System.err, charset);
    System.exit(Cli.run(out, err, args));
  }
}
