package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.FolderDesk;
import dev.gantrywright.ui.state.FolderState;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import javafx.animation.PauseTransition;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.util.Duration;

/**
 * Over every stage as long as what stands there speaks of another firmware folder than the profile
 * names; a folder that is read at once never shows it.
 */
public final class FolderStrip extends HBox implements Subscription {
  /** From here on a user wonders. */
  private static final Duration PATIENCE = Duration.millis(300);

  private final Label words = Pieces.paragraph("");
  private final ProgressBar progress = new ProgressBar(0);
  private final HBox sign = new HBox(Mark.WARNING.sign(12));
  private final Button cancel;
  private final Button again;
  private final PauseTransition patience = new PauseTransition(PATIENCE);
  private final Subscription follow;

  public FolderStrip(FolderDesk desk) {
    getStyleClass().add("folder-strip");
    setId("folder-strip");
    cancel = Pieces.button("folder-cancel", Texts.of("folder.cancel"), "act-second", desk::cancel);
    again = Pieces.button("folder-again", Texts.of("folder.again"), "act-second", desk::read);
    progress.setPrefWidth(120);
    progress.setMinWidth(USE_PREF_SIZE);
    progress.setAccessibleText(Texts.of("folder.progress"));
    sign.setMinWidth(USE_PREF_SIZE);
    sign.setAlignment(javafx.geometry.Pos.CENTER);
    HBox.setHgrow(words, Priority.ALWAYS);
    words.setMaxWidth(Double.MAX_VALUE);
    setMinWidth(0);
    getChildren().addAll(progress, sign, words, cancel, again);
    show(this, false);
    patience.setOnFinished(over -> show(this, true));
    follow = desk.state().observe(this::tell);
  }

  private void tell(FolderState state) {
    boolean reads = state.kind() == FolderState.Kind.READING;
    boolean ended =
        state.kind() == FolderState.Kind.STOPPED || state.kind() == FolderState.Kind.FAILED;
    boolean another = state.another();
    show(progress, reads);
    show(cancel, reads);
    show(sign, ended);
    show(again, ended);
    progress.setProgress(state.share());
    String key = "folder." + (reads && state.share() < 0 ? "listing" : state.word());
    words.setText(
        reads || ended
            ? Texts.of(
                state.open().isEmpty() ? key + ".none" : key,
                state.named(),
                state.open(),
                state.words())
            : "");
    if (reads && another && !isVisible()) {
      if (patience.getStatus() != javafx.animation.Animation.Status.RUNNING) {
        patience.playFromStart();
      }
    } else {
      patience.stop();
      show(this, ended || reads && isVisible());
    }
  }

  private static void show(javafx.scene.Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  @Override
  public void close() {
    patience.stop();
    follow.close();
  }
}
