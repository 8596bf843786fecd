package dev.gantrywright.ui.prove;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;

/**
 * Writes into a printer's history off the window's thread; what was written shows in its record,
 * what cannot be written is said.
 */
final class Kept {
  /** Adds one event. */
  interface Writing {
    Object write() throws IOException;
  }

  private Kept() {}

  static void in(PrinterDesk desk, Writing event) {
    CompletableFuture.runAsync(
        () -> {
          try {
            event.write();
            Platform.runLater(() -> desk.recorded().update(count -> count + 1));
          } catch (IOException failed) {
            Platform.runLater(
                () -> desk.link().said().set(Texts.of("prove.notKept", failed.getMessage())));
          }
        });
  }
}
