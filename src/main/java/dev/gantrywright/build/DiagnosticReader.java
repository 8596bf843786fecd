package dev.gantrywright.build;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Reads diagnostics from a build's output, line by line: GCC and Clang text, their JSON and SARIF,
 * GNU and LLVM linkers, make and the shell. What it does not know is left alone.
 */
public final class DiagnosticReader {
  private final Consumer<Diagnostic> out;
  private final CompilerText compiler = new CompilerText();
  private final List<LineReader> others = List.of(new LinkerText(), new MakeText());
  private final JsonDiagnostics json = new JsonDiagnostics();

  /** Reads a line into a diagnostic, where it is one. */
  interface LineReader {
    Optional<Diagnostic> read(String line);
  }

  private Diagnostic held;

  public DiagnosticReader(Consumer<Diagnostic> out) {
    this.out = out;
  }

  /** All diagnostics of a finished output. */
  public static List<Diagnostic> readAll(List<String> lines) {
    List<Diagnostic> all = new java.util.ArrayList<>();
    DiagnosticReader reader = new DiagnosticReader(all::add);
    lines.forEach(reader::line);
    reader.end();
    return all;
  }

  /** Takes the next line. A diagnostic comes out once its notes are read. */
  public void line(String line) {
    Optional<List<Diagnostic>> structured = json.take(line);
    if (structured.isPresent()) {
      flush();
      structured.get().forEach(out);
      return;
    }
    if (json.inside()) {
      return;
    }
    for (LineReader reader : others) {
      Optional<Diagnostic> found = reader.read(line);
      if (found.isPresent()) {
        flush();
        held = found.get();
        return;
      }
    }
    compiler.read(line).ifPresent(this::compilerSaid);
  }

  private void compilerSaid(Diagnostic found) {
    if (found.level() == Diagnostic.Level.NOTE && held != null) {
      held =
          held.with(new Diagnostic.Note(found.file(), found.line(), found.column(), found.text()));
      return;
    }
    flush();
    held = found;
  }

  /** The output is over: hands out what was held back. */
  public void end() {
    flush();
  }

  private void flush() {
    if (held != null) {
      out.accept(held);
      held = null;
    }
  }
}
