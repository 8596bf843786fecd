package dev.gantrywright.cli;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.TiedDiagnostic;
import dev.gantrywright.build.BuildCommand;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.build.Diagnostic;
import dev.gantrywright.build.MemoryNeed;
import dev.gantrywright.build.ReportedSize;
import dev.gantrywright.image.Examination;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;

/** What {@code build} prints: the build's own lines as they come, then what came of it. */
final class BuildPrinter implements BuildListener {
  private final CommandSpec spec;
  private final boolean json;

  BuildPrinter(CommandSpec spec, boolean json) {
    this.spec = spec;
    this.json = json;
  }

  private PrintWriter out() {
    return Printed.out(spec);
  }

  void usual(Duration took) {
    if (!json) {
      out().println("the last build took " + seconds(took));
    }
  }

  @Override
  public void started(BuildCommand command, int attempt) {
    if (!json) {
      out().println((attempt == 1 ? "build: " : "second try: ") + command.shown());
      out().flush();
    }
  }

  @Override
  public void line(String text) {
    if (!json) {
      out().println("  " + text);
      out().flush();
    }
  }

  @Override
  public void secondTry(String reason) {
    if (!json) {
      out().println("the failure looks passing, so it is tried once more: " + reason);
    }
  }

  void done(BuildJob job, Path folder, BuildJob.Done done) {
    if (json) {
      Printed.json(spec, document(job, folder, done));
      return;
    }
    done.diagnostics().forEach(this::diagnostic);
    done.build().sizes().forEach(s -> out().println("  " + size(s)));
    done.need().ifPresent(need -> need(need, done));
    BuildResult b = done.build();
    out()
        .printf(
            Locale.ROOT,
            "%s in %s: %s, %s%n",
            b.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            seconds(b.took()),
            Counted.of(b.errors(), "error"),
            Counted.of(b.warnings(), "warning"));
    b.problem().ifPresent(out()::println);
    done.imageProblem().ifPresent(out()::println);
    done.image()
        .ifPresent(i -> ImageText.print(out(), b.artefact().orElseThrow(), i, done.verdict()));
  }

  /** Against the part's memory, where the part is known. */
  private void need(MemoryNeed need, BuildJob.Done done) {
    if (done.verdict().isEmpty()) {
      return;
    }
    Examination e = done.verdict().get().examination();
    long ram = e.chip().ram().stream().mapToLong(b -> b.range().size()).sum();
    out()
        .printf(
            Locale.ROOT,
            "takes %,d of %,d bytes of flash and %,d of %,d bytes of RAM, stack not counted%n",
            need.flashBytes(),
            e.programFlash().size(),
            need.ramBytes(),
            ram);
  }

  private void diagnostic(TiedDiagnostic tied) {
    Diagnostic d = tied.diagnostic();
    String place = d.file().isEmpty() ? "" : d.file() + (d.line() > 0 ? ":" + d.line() : "") + ": ";
    out()
        .println(
            d.level().name().toLowerCase(Locale.ROOT)
                + " "
                + place
                + d.text()
                + (d.flag().isEmpty() ? "" : " [" + d.flag() + "]"));
    for (TiedDiagnostic.Tie tie : tied.ties()) {
      out()
          .println(
              "        "
                  + tie.macro()
                  + " "
                  + tie.value()
                  + " ("
                  + tie.file()
                  + ":"
                  + tie.line()
                  + ")"
                  + (tie.paths().isEmpty() ? "" : " is " + String.join(", ", tie.paths())));
    }
  }

  private static String size(ReportedSize s) {
    return s.regionBytes().isPresent()
        ? String.format(
            Locale.ROOT,
            "%s: %,d of %,d bytes",
            s.region(),
            s.usedBytes(),
            s.regionBytes().getAsLong())
        : String.format(Locale.ROOT, "%s: %,d bytes", s.region(), s.usedBytes());
  }

  private static String seconds(Duration d) {
    return String.format(Locale.ROOT, "%.1f s", d.toMillis() / 1000.0);
  }

  private static Map<String, Object> document(BuildJob job, Path folder, BuildJob.Done done) {
    BuildResult b = done.build();
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("folder", folder.toString());
    document.put("command", job.command().words());
    document.put("outcome", b.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    document.put("exit", b.exit());
    document.put("attempts", b.attempts());
    document.put("retryReason", b.retryReason().orElse(null));
    document.put("started", b.started().toString());
    document.put("millis", b.took().toMillis());
    document.put("errors", b.errors());
    document.put("warnings", b.warnings());
    document.put("problem", b.problem().orElse(done.imageProblem().orElse(null)));
    document.put("diagnostics", done.diagnostics().stream().map(BuildPrinter::row).toList());
    document.put("sizes", b.sizes().stream().map(BuildPrinter::row).toList());
    document.put("flashBytes", done.need().map(MemoryNeed::flashBytes).orElse(null));
    document.put("ramBytes", done.need().map(MemoryNeed::ramBytes).orElse(null));
    document.put("artefact", b.artefact().map(Path::toString).orElse(null));
    document.put(
        "image",
        done.image()
            .map(i -> ImageJson.of(b.artefact().orElseThrow(), i, done.verdict()))
            .orElse(null));
    document.put("good", done.good());
    return document;
  }

  private static Map<String, Object> row(ReportedSize s) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("region", s.region());
    row.put("used", s.usedBytes());
    row.put("of", s.regionBytes().isPresent() ? s.regionBytes().getAsLong() : null);
    return row;
  }

  private static Map<String, Object> row(TiedDiagnostic tied) {
    Diagnostic d = tied.diagnostic();
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("origin", d.origin().name().toLowerCase(Locale.ROOT));
    row.put("level", d.level().name().toLowerCase(Locale.ROOT));
    row.put("file", d.file());
    row.put("line", d.line());
    row.put("column", d.column());
    row.put("flag", d.flag());
    row.put("text", d.text());
    row.put("overBytes", d.overBytes().isPresent() ? d.overBytes().getAsLong() : null);
    row.put("notes", d.notes());
    row.put("settings", tied.ties());
    return row;
  }
}
