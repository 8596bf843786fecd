package dev.gantrywright.ui.state;

import dev.gantrywright.app.record.FirmwareIdentity;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Proof;
import dev.gantrywright.prove.ProofReport;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/** Compares a machine with its profile over an open line, one proof at a time. */
final class LineProof {
  private final Executor background;
  private final Executor view;
  private final Cell<Optional<ProofReport>> report = new Cell<>(Optional.empty());
  private final Cell<Boolean> running = new Cell<>(false);

  LineProof(Executor background, Executor view) {
    this.background = background;
    this.view = view;
  }

  Cell<Optional<ProofReport>> report() {
    return report;
  }

  Cell<Boolean> running() {
    return running;
  }

  /**
   * Begins, and does not wait; does nothing while one is running.
   *
   * @param file the profile's; null where it is in none
   * @param held axis ends that are touched
   * @param trouble told, on the view's thread, why there is no report
   */
  void run(
      PrinterProfile profile,
      Path file,
      LineSession session,
      Set<String> held,
      Consumer<String> trouble) {
    if (running.get()) {
      return;
    }
    running.set(true);
    background.execute(
        () -> {
          Optional<ProofReport> result = Optional.empty();
          String why = "";
          try {
            result =
                Optional.of(
                    Proof.of(
                        profile,
                        session,
                        held,
                        Map.of(),
                        FirmwareIdentity.expected(profile, file)));
          } catch (LinkException failed) {
            why = failed.getMessage();
          } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            why = Texts.of("link.interrupted");
          }
          hand(result, why, trouble);
        });
  }

  private void hand(Optional<ProofReport> result, String why, Consumer<String> trouble) {
    view.execute(
        () -> {
          running.set(false);
          if (!why.isEmpty()) {
            trouble.accept(why);
          }
          report.set(result);
        });
  }

  void forget() {
    report.set(Optional.empty());
  }
}
