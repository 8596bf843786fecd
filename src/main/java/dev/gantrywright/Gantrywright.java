package dev.gantrywright;

import dev.gantrywright.cli.Cli;
import dev.gantrywright.cli.TerminalJob;
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
    if (args.length > 0) {
      System.exit(Cli.run(out, err, args));
    }
    String display = Display.ofThisProcess().missing();
    out.println(display + ": the same job runs in the terminal");
    System.exit(new TerminalJob(out, err).run());
  }
}
