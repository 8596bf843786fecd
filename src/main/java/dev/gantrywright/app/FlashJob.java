package dev.gantrywright.app;

import dev.gantrywright.build.ArtefactPattern;
import dev.gantrywright.build.BuildCommand;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.build.BuildRun;
import dev.gantrywright.load.FlashCommand;
import dev.gantrywright.load.TypedConfirmation;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.Optional;

/**
 * Loads by a flashing command of the user's own: once, followed line by line, and noted where it
 * ended well. {@link #run} blocks; {@link #cancel} may come from any thread.
 */
public final class FlashJob {
  private final LoadJob job;
  private final LoadJob.Request request;
  private final FlashCommand flash;
  private final BuildRun run;

  public FlashJob(
      LoadJob job, LoadJob.Request request, FlashCommand flash, BuildListener lines, Clock clock) {
    this.job = job;
    this.request = request;
    this.flash = flash;
    Path folder = request.file().toAbsolutePath().getParent();
    // The words hold the file as given, so the command runs where that name is right.
    BuildCommand command =
        new BuildCommand(
            flash.words(), Path.of("").toAbsolutePath(), Map.of("IMAGE_FOLDER", folder.toString()));
    this.run = new BuildRun(command, ArtefactPattern.none(), lines, clock);
  }

  /**
   * What speaks against running it.
   *
   * @param confirm the sentence that was typed, where one is asked for; may be null
   * @param board name of the board
   * @throws LoadJob.Refused with one line
   */
  public static void look(LoadJob.Request request, FlashCommand flash, String confirm, String board)
      throws LoadJob.Refused {
    Optional<String> refusal = request.verdict().flatMap(v -> v.refusal(request.reason()));
    if (refusal.isPresent()) {
      throw new LoadJob.Refused(refusal.get());
    }
    Optional<TypedConfirmation> typed = flash.confirmation(board);
    if (typed.isPresent() && !typed.get().typed(confirm)) {
      throw new LoadJob.Refused(
          "load refused: "
              + typed.get().lost()
              + " If that is meant, confirm it by typing: "
              + typed.get().sentence());
    }
  }

  /**
   * Runs it.
   *
   * @throws IOException where the history cannot be written
   */
  public BuildResult run(String sha256) throws IOException {
    BuildResult result = run.runOnce();
    if (result.exit() == 0) {
      job.remember(request, sha256, String.join(" ", flash.words()), Optional.empty());
    }
    return result;
  }

  /** Ends the command and all that it started. */
  public void cancel() {
    run.cancel();
  }

  /** How it ended, in one line. */
  public static String told(BuildResult result) {
    return result
        .problem()
        .orElse(
            result.exit() == 0
                ? "the command ended well; ask the board which firmware it runs"
                : "the command ended with "
                    + result.exit()
                    + "; keep power on and the cable in, and load again");
  }
}
