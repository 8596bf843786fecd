package dev.gantrywright.ui;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.control.TextField;

/**
 * A window in a process of its own, for a test to kill: {@code KilledWindow FOLDER}. Types 81 into
 * Heron's X steps/mm, says so a second later, then types 82, 83 … until it is gone.
 *
 * <p>What the window began within that second it may end: how long a write takes on a machine that
 * is busy with other work is not the window's to say.
 */
public final class KilledWindow {
  static final String A_SECOND_LATER = "a second later";

  private KilledWindow() {}

  public static void main(String[] args) throws Exception {
    OpenWindow open = new OpenWindow(Path.of(args[0]));
    open.heron();
    open.click("#part-axes-x");
    open.until(() -> open.window().scene().lookup("#edit-axes-x-stepsPerMm") != null);
    TextField field = (TextField) open.find("#edit-axes-x-stepsPerMm").orElseThrow();
    CountDownLatch later = new CountDownLatch(1);
    open.run(
        () -> {
          field.setText("81");
          // By the clock of the window's own pauses, so that neither is late alone.
          CompletableFuture.delayedExecutor(1, TimeUnit.SECONDS, Runnable::run)
              .execute(later::countDown);
        });
    later.await();
    open.atRest();
    System.out.println(A_SECOND_LATER);
    for (int value = 82; ; value++) {
      String text = Integer.toString(value);
      Platform.runLater(() -> field.setText(text));
      Thread.sleep(5);
    }
  }
}
