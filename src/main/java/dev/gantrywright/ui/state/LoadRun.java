package dev.gantrywright.ui.state;

import dev.gantrywright.app.ChosenImage;
import dev.gantrywright.app.FlashJob;
import dev.gantrywright.app.LoadJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.load.Card;
import dev.gantrywright.load.CopyStep;
import dev.gantrywright.load.Drive;
import dev.gantrywright.load.FlashCommand;
import dev.gantrywright.load.FolderCard;
import dev.gantrywright.load.LoadOutcome;
import dev.gantrywright.load.LoadProblem;
import dev.gantrywright.load.Uf2Drive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** One load of one judged image; its methods block and give the state that it ended in. */
final class LoadRun {
  private static final int LINES = 200;

  private final LoadJob job;
  private final OpenPrinter printer;
  private final ChosenImage image;
  private final Clock clock;
  private final Runnable said;
  private final Deque<String> lines = new ArrayDeque<>();
  private volatile FlashJob flash;

  /**
   * @param said is told that a flashing command has printed another line
   */
  LoadRun(LoadJob job, OpenPrinter printer, ChosenImage image, Clock clock, Runnable said) {
    this.job = job;
    this.printer = printer;
    this.image = image;
    this.clock = clock;
    this.said = said;
  }

  LoadState copy(Path folder, String name, String reason) {
    try {
      if (!Files.isDirectory(folder)) {
        return failed(Texts.of("load.noCard", folder));
      }
      Path root = folder.toRealPath();
      Optional<Drive> drive =
          LoadDesk.now().stream().filter(d -> d.root().equals(root)).findFirst();
      Card card = new FolderCard(folder);
      LoadJob.Request request = request(name, card, drive, reason);
      Optional<Uf2Drive> board = Uf2Drive.on(card);
      if (board.isPresent()) {
        LoadOutcome outcome = job.drive(request, board.get(), () -> Files.isDirectory(folder));
        if (outcome.state() == LoadOutcome.State.LOADED) {
          Past.keep(
              printer,
              clock,
              kept ->
                  kept.taken(
                      printer.profile(),
                      request,
                      image.image().sha256(),
                      "drive of " + board.get().model()));
        }
        return told(outcome);
      }
      LoadJob.Done done = job.run(request);
      String past =
          Past.keep(printer, clock, kept -> kept.loaded(printer.profile(), request, done));
      return new LoadState(
          LoadState.Kind.COPIED,
          Optional.of(CopyStep.DONE),
          Texts.of(
                  "load.copied",
                  done.report().name(),
                  done.report().bytes(),
                  done.report().sha256().substring(0, 12))
              + (past.isEmpty() ? "" : " " + past),
          List.of());
    } catch (LoadJob.Refused refused) {
      return failed(Texts.of("load.refused", shortened(refused.getMessage())));
    } catch (LoadProblem | IOException why) {
      return failed(why.getMessage());
    }
  }

  /** The reason is asked for in a field of its own here, so the terminal's hint goes. */
  private static String shortened(String line) {
    return line.replaceFirst("^load refused: ", "")
        .replaceFirst(" To load all the same, give a reason\\.$", "");
  }

  LoadState flash(List<String> words, String confirm, String reason) {
    try {
      FlashCommand command = FlashCommand.of(words, image.file());
      LoadJob.Request request =
          request(image.file().getFileName().toString(), null, Optional.empty(), reason);
      FlashJob.look(request, command, confirm, printer.sheet() == null ? "" : board());
      flash = new FlashJob(job, request, command, listener(), clock);
      BuildResult result = flash.run(image.image().sha256());
      LoadState.Kind kind = result.exit() == 0 ? LoadState.Kind.FLASHED : LoadState.Kind.FAILED;
      if (kind == LoadState.Kind.FLASHED) {
        Past.keep(
            printer,
            clock,
            kept ->
                kept.loadedBy(
                    printer.profile(),
                    request,
                    image.image().sha256(),
                    String.join(" ", command.words())));
      }
      return new LoadState(kind, Optional.empty(), FlashJob.told(result), last());
    } catch (LoadJob.Refused refused) {
      return failed(Texts.of("load.refused", shortened(refused.getMessage())));
    } catch (IllegalArgumentException unusable) {
      return failed(unusable.getMessage());
    } catch (IOException why) {
      return failed(why.getMessage());
    }
  }

  private String board() {
    String name = printer.sheet().name();
    return name == null ? "" : name;
  }

  private LoadJob.Request request(String name, Card card, Optional<Drive> drive, String reason) {
    return new LoadJob.Request(
        image.file(),
        image.bytes(),
        name,
        card,
        drive,
        image.verdict(),
        Optional.ofNullable(reason).filter(text -> !text.isBlank()));
  }

  private BuildListener listener() {
    return new BuildListener() {
      @Override
      public void line(String text) {
        synchronized (lines) {
          lines.addLast(text);
          if (lines.size() > LINES) {
            lines.removeFirst();
          }
        }
        said.run();
      }
    };
  }

  /** The last lines of the flashing command. */
  List<String> last() {
    synchronized (lines) {
      return List.copyOf(lines);
    }
  }

  void cancel() {
    FlashJob now = flash;
    if (now != null) {
      now.cancel();
    }
  }

  private static LoadState failed(String why) {
    return LoadState.of(LoadState.Kind.FAILED, why);
  }

  static LoadState told(LoadOutcome outcome) {
    LoadState.Kind kind =
        switch (outcome.state()) {
          case LOADED -> LoadState.Kind.LOADED;
          case NOT_LOADED -> LoadState.Kind.FAILED;
          case UNSURE -> LoadState.Kind.UNSURE;
        };
    return LoadState.of(kind, outcome.text() + " " + outcome.todo());
  }
}
