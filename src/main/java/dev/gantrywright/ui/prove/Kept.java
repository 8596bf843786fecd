package dev.gantrywright.ui.prove;

import dev.gantrywright.ui.state.Cell;
import dev.gantrywright.ui.state.Texts;
import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;

/** Writes into a printer's history off the window's thread; what cannot be written is said. */
final class Kept {
  /** Adds one event. */
  interface Writing {
    Object write() throws IOException;
  }

  private Kept() {}

  static void in(Cell<String> said, Writing event) {
    CompletableFuture.runAsync(
        () -> {
          try {
            event.write();
          } catch (IOException failed) {
            Platform.runLater(() -> said.set(Texts.of("prove.notKept", failed.getMessage())));
          }
        });
  }
}
