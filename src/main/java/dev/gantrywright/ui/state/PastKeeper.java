package dev.gantrywright.ui.state;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.ProofReport;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Set;
import java.util.concurrent.Executor;

/** Keeps what the window did with a printer in the history beside its profile. */
public final class PastKeeper implements Subscription {
  private interface Keeping {
    void in(PrinterHistory history) throws IOException;
  }

  private final PrinterDesk desk;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<String> said = new Cell<>("");
  private final Cell<Integer> kept = new Cell<>(0);
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param background writes
   */
  public PastKeeper(
      PrinterDesk desk, BuildDesk build, Clock clock, Executor background, Executor view) {
    this.desk = desk;
    this.clock = clock;
    this.background = background;
    this.view = view;
    subscriptions.add(build.state().listen(state -> state.done().ifPresent(this::built)));
    subscriptions.add(desk.link().proof().listen(proof -> proof.ifPresent(this::proved)));
  }

  /** Why the last thing could not be kept; empty where it could. */
  public Cell<String> said() {
    return said;
  }

  /** How many events were kept so far. */
  public Cell<Integer> kept() {
    return kept;
  }

  private void built(BuildJob.Done done) {
    PrinterProfile profile = desk.profile();
    String command = WordList.typed(profile.build().command());
    keep(history -> history.built(profile, done, command));
  }

  private void proved(ProofReport report) {
    PrinterProfile profile = desk.profile();
    Set<String> touched = desk.link().touched().get();
    keep(history -> history.proved(profile, report, touched));
  }

  private void keep(Keeping keeping) {
    Path file = desk.opened().get().file();
    String by = System.getProperty("user.name", "");
    background.execute(
        () -> {
          try {
            keeping.in(PrinterHistory.beside(file, by, clock));
            view.execute(() -> kept.update(count -> count + 1));
          } catch (IOException failed) {
            view.execute(
                () -> said.set(Texts.of("keep.past", String.valueOf(failed.getMessage()))));
          }
        });
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
