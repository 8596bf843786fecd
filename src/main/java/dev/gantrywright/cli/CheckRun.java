package dev.gantrywright.cli;

import dev.gantrywright.app.Checking;
import dev.gantrywright.header.Progress;
import dev.gantrywright.report.FindingsLayout;
import dev.gantrywright.report.FindingsLayout.Unread;
import dev.gantrywright.report.Utf8Text;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * One run of {@code check}: prints each printer's findings as they come, in the order of the files.
 * Ctrl-C ends the document where it stands, so that what was printed is whole.
 */
final class CheckRun {
  private final FindingsLayout layout;
  private final boolean pageHint;
  private final PrintWriter out;
  private final PrintWriter err;
  private final ProgressLine progress;
  private final ThreadLocal<Utf8Text> texts = ThreadLocal.withInitial(Utf8Text::new);
  private final List<Unread> unread = new ArrayList<>();
  private boolean started;
  private boolean errors;
  private String rule;
  private int done;

  /** What is kept of one printer until its turn comes. */
  private record Part(byte[] text, boolean errors, String rule, Unread unread) {}

  /**
   * @param pageHint whether the last line tells how to open a rule's page
   */
  CheckRun(FindingsLayout layout, PrintWriter out, PrintWriter err, int files, boolean pageHint) {
    this.layout = layout;
    this.pageHint = pageHint;
    this.out = out;
    this.err = err;
    this.progress = new ProgressLine(err, files, "checked");
  }

  /** Runs it, and returns the exit status. */
  int of(Supplier<Checking> checking, List<Path> files, Path folder) {
    try (CtrlC key = new CtrlC()) {
      boolean whole =
          Checking.stream(
              checking,
              files,
              folder,
              Progress.until(key::pressed),
              this::part,
              part -> print(part) && !key.pressed());
      progress.clear();
      end(whole, files.size());
    }
    if (!unread.isEmpty()) {
      return ExitStatus.USAGE;
    }
    return errors ? ExitStatus.FINDINGS : ExitStatus.FINE;
  }

  private Part part(Checking.Result result) {
    if (result.findings() == null) {
      return new Part(
          new byte[0], false, null, new Unread(result.file().toString(), result.problem()));
    }
    Utf8Text text = texts.get().clear();
    layout.write(result.findings(), text);
    byte[] bytes = BytePrinter.recoded(out, text.bytes());
    List<Finding> open = result.findings().open();
    String rule = open.isEmpty() ? null : open.get(0).id();
    return new Part(bytes, result.findings().count(Level.ERROR) > 0, rule, null);
  }

  private boolean print(Part part) {
    done++;
    errors |= part.errors();
    rule = rule == null ? part.rule() : rule;
    if (part.unread() != null) {
      unread.add(part.unread());
      progress.clear();
      err.println(part.unread().problem());
    } else if (part.text().length > 0 && !shown(part.text())) {
      return false;
    }
    progress.at(done);
    return true;
  }

  /** False where a reader that has seen enough, such as head, has closed the pipe. */
  private boolean shown(byte[] text) {
    out.print(started ? layout.between() : layout.head());
    started = true;
    try {
      BytePrinter.print(out, text);
      return true;
    } catch (UncheckedIOException closed) {
      return false;
    }
  }

  private void end(boolean whole, int files) {
    out.print(started ? layout.tail(unread, whole) : layout.empty(unread, whole));
    if (pageHint && rule != null) {
      out.println();
      out.println("Why a rule says so: gantrywright check --page " + rule);
    }
    out.flush();
    if (!whole) {
      err.println("stopped after " + done + " of " + Counted.of(files, "printer"));
    }
  }
}
