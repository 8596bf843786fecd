package dev.gantrywright.cli;

import dev.gantrywright.app.LoadJob;
import dev.gantrywright.build.ArtefactPattern;
import dev.gantrywright.build.BuildCommand;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.build.BuildRun;
import dev.gantrywright.load.Caution;
import dev.gantrywright.load.FlashCommand;
import dev.gantrywright.load.TypedConfirmation;
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
    Optional<String> refusal = request.verdict().flatMap(v -> v.refusal(request.reason()));
    if (refusal.isPresent()) {
      new LoadPrinter(spec, json).refused(request, refusal.get());
      return ExitStatus.FINDINGS;
    }
    if (!json) {
      flash.cautions().forEach(c -> Printed.out(spec).println(c.line()));
    }
    Optional<TypedConfirmation> typed = flash.confirmation(sheet.map(BoardSheet::name).orElse(""));
    if (typed.isPresent() && !typed.get().typed(confirm)) {
      new LoadPrinter(spec, json)
          .refused(
              request,
              "load refused: "
                  + typed.get().lost()
                  + " If that is meant, add --confirm '"
                  + typed.get().sentence()
                  + "'.");
      return ExitStatus.FINDINGS;
    }
    BuildResult result = follow(flash, request);
    if (result.exit() == 0) {
      String command = String.join(" ", flash.words());
      job.remember(request, sha(request), command, Optional.empty());
      loaded.by(request, sha(request), command);
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

  private BuildResult follow(FlashCommand flash, LoadJob.Request request) {
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
    Path folder = request.file().toAbsolutePath().getParent();
    // The words hold the file as given, so the command runs where that name is right.
    BuildCommand command =
        new BuildCommand(
            flash.words(), Path.of("").toAbsolutePath(), Map.of("IMAGE_FOLDER", folder.toString()));
    BuildRun run = new BuildRun(command, ArtefactPattern.none(), lines, Clock.systemUTC());
    Thread stop = new Thread(run::cancel, "end the flashing command");
    Runtime.getRuntime().addShutdownHook(stop);
    try {
      return run.runOnce();
    } finally {
      unhook(stop);
    }
  }

  private static void unhook(Thread stop) {
    try {
      Runtime.getRuntime().removeShutdownHook(stop);
    } catch (IllegalStateException e) {
      // The program is going down and the hook is at work: nothing is left to take off.
      return;
    }
  }

  private static String sha(LoadJob.Request request) {
    return request
        .verdict()
        .map(v -> v.examination().image().sha256())
        .orElseGet(() -> ImageFile.read(request.file()).sha256());
  }

  private void report(FlashCommand flash, BuildResult result) {
    String text =
        result
            .problem()
            .orElse(
                result.exit() == 0
                    ? "the command ended well; ask the board which firmware it runs"
                    : "the command ended with "
                        + result.exit()
                        + "; keep power on and the cable in, and load again");
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
