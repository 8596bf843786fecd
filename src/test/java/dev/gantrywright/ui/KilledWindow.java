package dev.gantrywright.ui;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.control.TextField;
import javafx.util.Duration;

/**
 * A window in a process of its own, for a test to kill: {@code KilledWindow FOLDER}. Types 81 into
 * Heron's X steps/mm, says so a second later, then types 82, 83 … until it is gone.
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
          PauseTransition second = new PauseTransition(Duration.seconds(1));
          second.setOnFinished(end -> later.countDown());
          second.play();
        });
    later.await();
    System.out.println(A_SECOND_LATER);
    for (int value = 82; ; value++) {
      String text = Integer.toString(value);
      Platform.runLater(() -> field.setText(text));
      Thread.sleep(5);
    }
  }
}
