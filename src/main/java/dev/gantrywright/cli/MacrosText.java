package dev.gantrywright.cli;

import dev.gantrywright.header.ListingRun;
import dev.gantrywright.header.LiveMacros;
import dev.gantrywright.header.MacroListing;
import dev.gantrywright.header.Problem;
import dev.gantrywright.header.SystemFolders;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;

/** Prints the listings of {@code macros} as text, in the bytes of the headers. */
final class MacrosText implements ListingRun.Receiver {
  private final OutputStream out;
  private final PrintWriter err;
  private final boolean headed;
  private int status = ExitStatus.FINE;

  private MacrosText(OutputStream out, PrintWriter err, boolean headed) {
    this.out = out;
    this.err = err;
    this.headed = headed;
  }

  /** Lists the files on as many threads as there are processors; the exit status. */
  static int print(MacrosArguments arguments, OutputStream out, PrintWriter err) {
    List<Path> files = arguments.files();
    MacrosText text = new MacrosText(out, err, files.size() > 1);
    int helpers = Math.min(Runtime.getRuntime().availableProcessors(), files.size()) - 1;
    try {
      ListingRun.run(macros(arguments), files, new Threads(), helpers, text);
    } catch (IOException e) {
      throw new DeviceProblem("cannot write the listing: " + e.getMessage());
    }
    return text.status;
  }

  static LiveMacros macros(MacrosArguments arguments) {
    return new LiveMacros(arguments.defines(), searched(arguments));
  }

  static List<Path> searched(MacrosArguments arguments) {
    List<Path> folders = new ArrayList<>(arguments.include());
    if (arguments.systemHeaders()) {
      folders.addAll(SystemFolders.of(Path.of("/"), System.getProperty("os.arch")));
    }
    return folders;
  }

  /** A class rather than a lambda: a run over a few headers should not pay for making one. */
  private static final class Threads implements Executor {
    @Override
    public void execute(Runnable task) {
      Thread thread = new Thread(task, "listing");
      thread.setDaemon(true);
      thread.start();
    }
  }

  @Override
  public void listed(MacroListing listing) throws IOException {
    if (headed) {
      String line = "/* " + listing.file().toString().replace("*/", "*\\/") + " */\n";
      out.write(line.getBytes(StandardCharsets.UTF_8));
    }
    listing.writeTo(out);
    List<Problem> problems = listing.problems();
    for (int i = 0; i < problems.size(); i++) {
      err.println(problems.get(i));
    }
    if (!problems.isEmpty()) {
      err.flush();
    }
  }

  @Override
  public void unreadable(Path file, IOException why) {
    err.println(reason(file, why));
    status = ExitStatus.USAGE;
  }

  /** One clear line on a file that cannot be read. */
  static String reason(Path file, IOException why) {
    if (why instanceof NoSuchFileException) {
      return file + ": there is no such file; check the path";
    }
    if (Files.isDirectory(file)) {
      return file + ": this is a folder; give the header files themselves";
    }
    if (why instanceof AccessDeniedException) {
      return file + ": cannot be read, permission denied";
    }
    return file + ": cannot be read (" + why.getMessage() + ")";
  }
}
