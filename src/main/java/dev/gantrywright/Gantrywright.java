package dev.gantrywright;

import dev.gantrywright.cli.Cli;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;

/** The entry point: a verb runs on the command line, no verb opens the window. */
public final class Gantrywright {
  private Gantrywright() {}

  public static void main(String[] args) {
    Charset charset = Charset.defaultCharset();
    PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, charset), true);
    PrintWriter err = new PrintWriter(new OutputStreamWriter(System.err, charset), true);
    System.exit(Cli.run(out, err, args));
  }
}
