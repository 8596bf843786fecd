package dev.gantrywright.cli;

import dev.gantrywright.app.LoadJob;
import dev.gantrywright.load.Caution;
import dev.gantrywright.load.CopyStep;
import dev.gantrywright.load.Drive;
import dev.gantrywright.load.LoadOutcome;
import dev.gantrywright.load.LoadProblem;
import dev.gantrywright.load.LoadRemark;
import dev.gantrywright.load.Uf2Drive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.BiConsumer;
import picocli.CommandLine.Model.CommandSpec;

/** What {@code load} prints, as text or as one document. */
final class LoadPrinter {
  private final CommandSpec spec;
  private final boolean json;

  LoadPrinter(CommandSpec spec, boolean json) {
    this.spec = spec;
    this.json = json;
  }

  private void line(String text) {
    if (!json) {
      Printed.out(spec).println(text);
    }
  }

  void step(CopyStep step) {
    if (step != CopyStep.DONE) {
      line("  " + step.words());
    }
  }

  void cautions() {
    Caution.before(Caution.Act.CARD).forEach(c -> line(c.line()));
  }

  void done(LoadJob.Request request, LoadJob.Done done) {
    request.verdict().ifPresent(this::remarks);
    done.remarks().forEach(r -> line(remark(r)));
    line(
        String.format(
            Locale.ROOT,
            "%s on %s: %,d bytes, SHA-256 %s",
            done.report().name(),
            request.card().shown(),
            done.report().bytes(),
            done.report().sha256()));
    line(
        done.report().alreadyThere()
            ? "it stood there already, read again and found whole"
            : "proven: read back "
                + (done.report().fromCard()
                    ? "from the card"
                    : "(this system" + " does not tell whether from the card or from memory)")
                + " and equal");
    done.report().previousKept().ifPresent(p -> line("the image before is kept: " + p));
    line("Eject the drive before you pull the card. " + done.pending().next());
    if (json) {
      Map<String, Object> document = base(request);
      document.put("loaded", true);
      document.put("bytes", done.report().bytes());
      document.put("sha256", done.report().sha256());
      document.put("alreadyThere", done.report().alreadyThere());
      document.put("fromCard", done.report().fromCard());
      document.put("previousKept", done.report().previousKept().map(Path::toString).orElse(null));
      document.put("next", done.pending().next());
      document.put("cautions", Caution.before(Caution.Act.CARD));
      document.put("cardRemarks", done.remarks());
      Printed.json(spec, document);
    }
  }

  void refused(LoadJob.Request request, String why) {
    request.verdict().ifPresent(this::remarks);
    if (json) {
      Map<String, Object> document = base(request);
      document.put("loaded", false);
      document.put("refused", why);
      Printed.json(spec, document);
    } else {
      line(
          why.replaceAll(
              "To load all the same, give a reason\\.$",
              "To load all the same, give" + " --because REASON."));
    }
  }

  private Map<String, Object> base(LoadJob.Request request) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("file", request.file().toString());
    document.put("to", request.card() == null ? null : request.card().shown());
    document.put("as", request.name());
    document.put("reason", request.reason().orElse(null));
    document.put("remarks", request.verdict().map(ImageJson::remarks).orElse(List.of()));
    return document;
  }

  private void remarks(dev.gantrywright.image.Verdict verdict) {
    if (!json) {
      ImageText.remarks(Printed.out(spec), verdict);
    }
  }

  private static String remark(LoadRemark r) {
    return (r.error() ? "error " : "warning ") + r.id() + ": " + r.text() + " " + r.todo();
  }

  /**
   * A board that shows itself as a drive: there is nothing to read back, its going away is the
   * sign.
   */
  Integer uf2(
      LoadJob job,
      LoadJob.Request request,
      Uf2Drive drive,
      Path to,
      BiConsumer<LoadJob.Request, String> taken)
      throws LoadProblem, LoadJob.Refused, IOException {
    Caution.before(Caution.Act.USB_DRIVE).forEach(c -> line(c.line()));
    line("board " + drive.model() + " (" + drive.boardId() + "), " + drive.loader());
    LoadOutcome outcome = job.drive(request, drive, () -> Files.isDirectory(to));
    if (outcome.state() == LoadOutcome.State.LOADED) {
      taken.accept(request, "drive of " + drive.model());
    }
    outcome(outcome);
    return outcome.state() == LoadOutcome.State.LOADED ? ExitStatus.FINE : ExitStatus.FINDINGS;
  }

  void outcome(LoadOutcome outcome) {
    line(outcome.state().name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": " + outcome.text());
    line("  " + outcome.todo());
    if (json) {
      Printed.json(
          spec,
          Map.of(
              "state", outcome.state().name().toLowerCase(Locale.ROOT).replace('_', '-'),
              "text", outcome.text(),
              "todo", outcome.todo()));
    }
  }

  void kept(List<Path> images) {
    if (json) {
      Printed.json(spec, Map.of("kept", images.stream().map(Path::toString).toList()));
      return;
    }
    line(images.isEmpty() ? "no image was replaced yet" : "images to go back to, newest first:");
    images.forEach(p -> line("  " + p));
  }

  void drives(List<Drive> drives) {
    if (json) {
      Printed.json(spec, Map.of("drives", drives.stream().map(LoadPrinter::drive).toList()));
      return;
    }
    line(
        drives.isEmpty()
            ? "no card or drive that can be taken out is mounted"
            : "cards and drives:");
    for (Drive d : drives) {
      line(
          String.format(
              Locale.ROOT,
              "  %s  %s%s, %,d of %,d MiB free%s",
              d.root(),
              d.fileSystem(),
              d.fat() ? "" : " (most loaders read FAT only)",
              d.freeBytes() >> 20,
              d.totalBytes() >> 20,
              d.readOnly() ? ", locked" : ""));
    }
  }

  private static Map<String, Object> drive(Drive d) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("root", d.root().toString());
    row.put("device", d.device());
    row.put("fileSystem", d.fileSystem());
    row.put("fat", d.fat());
    row.put("readOnly", d.readOnly());
    row.put("totalBytes", d.totalBytes());
    row.put("freeBytes", d.freeBytes());
    return row;
  }
}
