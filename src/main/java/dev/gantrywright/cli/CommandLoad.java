package dev.gantrywright.cli;

import dev.gantrywright.app.FlashJob;
import dev.gantrywright.app.LoadJob;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.load.Caution;
import dev.gantrywright.load.FlashCommand;
import dev.gantrywright.machine.BoardSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;

/** Loads by a command of the user's own: judged, cautioned, followed, and noted. */
final class CommandLoad {
  /** Told of an image that the command has loaded. */
  interface Loaded {
    void by(LoadJob.Request request, String sha256, String command);
  }

  private final CommandSpec spec;
  private final boolean json;

  CommandLoad(CommandSpec spec, boolean json) {
    this.spec = spec;
    this.json = json;
  }

  Integer run(
      LoadJob job,
      LoadJob.Request request,
      List<String> words,
      String confirm,
      Optional<BoardSheet> sheet,
      Loaded loaded)
      throws IOException {
    FlashCommand flash = flash(words, request.file());
    try {
      if (!json && request.verdict().flatMap(v -> v.refusal(request.reason())).isEmpty()) {
        flash.cautions().forEach(c -> Printed.out(spec).println(c.line()));
      }
      FlashJob.look(request, flash, confirm, sheet.map(BoardSheet::name).orElse(""));
    } catch (LoadJob.Refused e) {
      new LoadPrinter(spec, json)
          .refused(
              request,
              e.getMessage().replaceAll("confirm it by typing: (.*)$", "add --confirm '$1'."));
      return ExitStatus.FINDINGS;
    }
    BuildResult result = follow(job, request, flash);
    if (result.exit() == 0) {
      loaded.by(request, sha(request), String.join(" ", flash.words()));
    }
    report(flash, result);
    return result.exit() == 0 ? ExitStatus.FINE : ExitStatus.DEVICE;
  }

  private static FlashCommand flash(List<String> words, Path file) {
    try {
      return FlashCommand.of(words, file);
    } catch (IllegalArgumentException e) {
      throw new UsageProblem(e.getMessage() + "; write: load FILE --by -- COMMAND … {file}", e);
    }
  }

  private BuildResult follow(LoadJob job, LoadJob.Request request, FlashCommand flash)
      throws IOException {
    BuildListener lines =
        new BuildListener() {
          @Override
          public void line(String text) {
            if (!json) {
              Printed.out(spec).println("  " + text);
              Printed.out(spec).flush();
            }
          }
        };
    FlashJob run = new FlashJob(job, request, flash, lines, Clock.systemUTC());
    try (CtrlC stop = new CtrlC(run::cancel)) {
      BuildResult result = run.run(sha(request));
      if (stop.pressed()) {
        Printed.err(spec)
            .println("flashing command ended; the board may hold half a firmware: load again");
      }
      return result;
    }
  }

  private static String sha(LoadJob.Request request) {
    return request
        .verdict()
        .map(v -> v.examination().image().sha256())
        .orElseGet(() -> ImageFile.read(request.file()).sha256());
  }

  private void report(FlashCommand flash, BuildResult result) {
    String text = FlashJob.told(result);
    if (json) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("loaded", result.exit() == 0);
      document.put("command", flash.words());
      document.put("exit", result.exit());
      document.put("text", text);
      document.put("output", result.lastLines());
      document.put("cautions", Caution.before(Caution.Act.COMMAND));
      Printed.json(spec, document);
    } else {
      Printed.out(spec).println(text);
    }
  }
}
