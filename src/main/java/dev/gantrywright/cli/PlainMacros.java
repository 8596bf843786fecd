package dev.gantrywright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.OptionalInt;

/**
 * The verb {@code macros} in its plain form, without the start-up cost of the full command line and
 * with the headers' bytes as they are.
 */
public final class PlainMacros {
  private PlainMacros() {}

  /** Runs the command line if it is the verb in its plain form; the exit status if it was. */
  public static OptionalInt run(String[] args) {
    if (args.length < 2 || !args[0].equals("macros")) {
      return OptionalInt.empty();
    }
    MacrosArguments arguments = MacrosArguments.parse(args, 1);
    if (arguments == null) {
      return OptionalInt.empty();
    }
    PrintWriter err =
        new PrintWriter(
            new OutputStreamWriter(
                new FileOutputStream(FileDescriptor.err), Charset.defaultCharset()));
    int status;
    try {
      status = MacrosText.print(arguments, new FileOutputStream(FileDescriptor.out), err);
    } catch (DeviceProblem e) {
      err.println(e.getMessage());
      status = ExitStatus.DEVICE;
    }
    err.flush();
    return OptionalInt.of(status);
  }
}
