package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.draw.Sketch;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.StationState;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The route: six stations on one line, each with what is open there. Nothing is locked. */
public final class RouteBar extends Region {
  private static final double HEIGHT = 62;
  private static final double LINE = 30;
  private static final double LEFT = 52;

  private final Sketch track = new Sketch();
  private final Map<Stage, Station> stations = new EnumMap<>(Stage.class);
  private final Map<Stage, StationState> states = new EnumMap<>(Stage.class);
  private Stage here = Stage.DESCRIBE;
  private String drawn = "";

  public RouteBar(Consumer<Stage> go) {
    getStyleClass().add("route");
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
    getChildren().add(track);
    for (Stage stage : Stage.values()) {
      Station station = new Station(stage);
      station.button.setOnAction(click -> go.accept(stage));
      station.button.addEventFilter(KeyEvent.KEY_PRESSED, key -> keyed(key, stage, go));
      stations.put(stage, station);
      states.put(stage, StationState.open(""));
      getChildren().add(station.button);
    }
  }

  private void keyed(KeyEvent key, Stage stage, Consumer<Stage> go) {
    int step =
        switch (key.getCode()) {
          case RIGHT -> 1;
          case LEFT -> -1;
          default -> 0;
        };
    if (step != 0) {
      Stage[] all = Stage.values();
      Stage next = all[Math.floorMod(stage.ordinal() + step, all.length)];
      go.accept(next);
      stations.get(next).button.requestFocus();
      key.consume();
    }
  }

  public void show(Stage stage) {
    here = stage;
    stations.forEach(
        (each, station) -> {
          station.button.setSelected(each == stage);
          station.button.setFocusTraversable(each == stage);
        });
    requestLayout();
  }

  public void show(Stage stage, StationState state) {
    if (!state.equals(states.put(stage, state))) {
      stations.get(stage).show(state);
      requestLayout();
    }
  }

  @Override
  protected void layoutChildren() {
    double pitch = (getWidth() - LEFT - 28) / Stage.values().length;
    for (Stage stage : Stage.values()) {
      double x = LEFT + pitch * stage.ordinal();
      stations.get(stage).button.resizeRelocate(x - 6, 4, pitch - 10, HEIGHT - 10);
    }
    String looks = pitch + " " + here + " " + states;
    if (!looks.equals(drawn)) {
      drawn = looks;
      draw(pitch);
    }
  }

  private void draw(double pitch) {
    track.clear();
    for (Stage stage : Stage.values()) {
      double x = LEFT + pitch * stage.ordinal();
      if (stage.ordinal() > 0) {
        Stage before = Stage.values()[stage.ordinal() - 1];
        boolean done = states.get(before).sign() == StationState.Sign.SETTLED;
        track.line(x - pitch + 11, LINE, x - 11, LINE, done ? "track-done" : "track");
      }
    }
    for (Stage stage : Stage.values()) {
      sign(LEFT + pitch * stage.ordinal(), states.get(stage), stage == here);
    }
    track.dress();
  }

  private void sign(double x, StationState state, boolean chosen) {
    switch (state.sign()) {
      case SETTLED -> {
        track.circle(x, LINE, 10, "station-settled");
        track.polyline("station-tick", x - 4.5, LINE, x - 1.2, LINE + 3.6, x + 5, LINE - 4);
      }
      case OPEN -> track.circle(x, LINE, 9, "station-dot");
      default -> {
        Gravity gravity = Gravity.valueOf(state.sign().name());
        double size = gravity == Gravity.WARNING ? 22 : 20;
        Node sign = Mark.of(gravity).sign(size);
        sign.setLayoutX(x - size / 2);
        sign.setLayoutY(LINE - size / 2);
        track.getChildren().add(sign);
        if (state.count() > 0) {
          double drop = gravity == Gravity.WARNING ? 7 : 4.5;
          track.text(Integer.toString(state.count()), x, LINE + drop, 0.5, "station-count");
        }
      }
    }
    if (chosen) {
      track.polygon("here", x - 7, HEIGHT, x + 7, HEIGHT, x, HEIGHT - 8);
    }
  }

  private static final class Station {
    private final Stage stage;
    private final ToggleButton button = new ToggleButton();
    private final Label words = new Label();

    Station(Stage stage) {
      this.stage = stage;
      Label name = new Label(stage.title());
      name.getStyleClass().add("station-name");
      words.getStyleClass().add("station-state");
      VBox box = new VBox(5, name, words);
      button.setGraphic(box);
      button.getStyleClass().setAll("station");
      button.setId("stage-" + stage.name().toLowerCase(java.util.Locale.ROOT));
      button.setAccessibleRole(AccessibleRole.TAB_ITEM);
      show(StationState.open(""));
    }

    void show(StationState state) {
      words.setText(state.words());
      words.getStyleClass().removeAll("error-text", "warning-text");
      if (state.sign() == StationState.Sign.ERROR) {
        words.getStyleClass().add("error-text");
      } else if (state.sign() == StationState.Sign.WARNING) {
        words.getStyleClass().add("warning-text");
      }
      button.setAccessibleText(stage.title() + ", " + state.words());
    }
  }
}
