package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.draw.Sketch;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.StationState;
import dev.gantrywright.ui.theme.Pieces;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;

/** The route: six stations on one line, each with what is open there. Nothing is locked. */
public final class RouteBar extends Region {
  private static final double HEIGHT = 62;
  private static final double LINE = 30;
  private static final double LEFT = 52;

  /** Below this distance between stations only the fewest words have room. */
  private static final double NARROW = 140;

  private final Sketch track = new Sketch();
  private final Map<Stage, Sketch> signs = new EnumMap<>(Stage.class);
  private final Map<Stage, String> signed = new EnumMap<>(Stage.class);
  private final Map<Stage, Text> counts = new EnumMap<>(Stage.class);
  private final Map<Stage, Station> stations = new EnumMap<>(Stage.class);
  private final Map<Stage, StationState> states = new EnumMap<>(Stage.class);
  private Stage here = Stage.DESCRIBE;
  private String drawn = "";
  private double left = LEFT;

  public RouteBar(Consumer<Stage> go) {
    getStyleClass().add("route");
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMaxHeight(HEIGHT);
    getChildren().add(track);
    for (Stage stage : Stage.values()) {
      signs.put(stage, new Sketch());
      getChildren().add(signs.get(stage));
    }
    for (Stage stage : Stage.values()) {
      Station station = new Station(stage);
      station.button.setOnAction(click -> go.accept(stage));
      station.button.addEventFilter(KeyEvent.KEY_PRESSED, key -> keyed(key, stage, go));
      stations.put(stage, station);
      states.put(stage, StationState.openAs(""));
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
    int count = Stage.values().length;
    double wide = (getWidth() - LEFT - 28) / count;
    boolean narrow = wide < NARROW;
    left = narrow ? 20 : LEFT;
    double pitch = narrow ? (getWidth() - left - 4) / count : wide;
    for (Stage stage : Stage.values()) {
      double x = left + pitch * stage.ordinal();
      Station station = stations.get(stage);
      station.narrow(narrow);
      double end = narrow ? 8 : 10;
      station.button.resizeRelocate(x - 6, 4, pitch - end, HEIGHT - 10);
    }
    // Only what looks otherwise is drawn anew: a keystroke changes one sign, not the whole route.
    StringBuilder line = new StringBuilder().append(pitch);
    for (Stage stage : Stage.values()) {
      line.append(' ').append(settled(stage));
      sign(left + pitch * stage.ordinal(), stage);
    }
    if (!drawn.contentEquals(line)) {
      drawn = line.toString();
      line(pitch);
    }
  }

  private boolean settled(Stage stage) {
    return states.get(stage).sign() == StationState.Sign.SETTLED;
  }

  private void line(double pitch) {
    track.clear();
    Stage[] all = Stage.values();
    for (int i = 1; i < all.length; i++) {
      double x = left + pitch * i;
      track.line(x - pitch + 11, LINE, x - 11, LINE, settled(all[i - 1]) ? "track-done" : "track");
    }
    track.dress();
  }

  private void sign(double x, Stage stage) {
    StationState state = states.get(stage);
    boolean counted = state.count() > 0;
    String looks = x + " " + (stage == here) + " " + state.sign() + " " + counted;
    if (!looks.equals(signed.put(stage, looks))) {
      Sketch sheet = signs.get(stage);
      sheet.clear();
      counts.put(stage, sign(sheet, x, state, stage == here));
      sheet.dress();
    } else if (counted) {
      counts.get(stage).setText(Integer.toString(state.count()));
    }
  }

  /** Draws the sign of a station; the figure in it, where it has one. */
  private static Text sign(Sketch sheet, double x, StationState state, boolean chosen) {
    Text figure = new Text();
    switch (state.sign()) {
      case SETTLED -> {
        sheet.circle(x, LINE, 10, "station-settled");
        sheet.polyline("station-tick", x - 4.5, LINE, x - 1.2, LINE + 3.6, x + 5, LINE - 4);
      }
      case OPEN -> sheet.circle(x, LINE, 9, "station-dot");
      default -> {
        Gravity gravity = Gravity.valueOf(state.sign().name());
        double size = gravity == Gravity.WARNING ? 22 : 20;
        Node sign = Mark.of(gravity).sign(size);
        sign.setLayoutX(x - size / 2);
        sign.setLayoutY(LINE - size / 2);
        sheet.getChildren().add(sign);
        if (state.count() > 0) {
          double drop = gravity == Gravity.WARNING ? 7 : 4.5;
          figure =
              sheet.text(Integer.toString(state.count()), x, LINE + drop, 0.5, "station-count");
        }
      }
    }
    if (chosen) {
      sheet.polygon("here", x - 7, HEIGHT, x + 7, HEIGHT, x, HEIGHT - 8);
    }
    return figure;
  }

  private static final class Station {
    private final Stage stage;
    private final ToggleButton button = new ToggleButton();
    private final Label words = new Label();
    private StationState shown;
    private boolean narrow;

    Station(Stage stage) {
      this.stage = stage;
      Label name = new Label(stage.title());
      name.getStyleClass().add("station-name");
      words.getStyleClass().add("station-state");
      words.setTextOverrun(OverrunStyle.WORD_ELLIPSIS);
      VBox box = new VBox(5, name, words);
      button.setGraphic(box);
      button.getStyleClass().setAll("station");
      button.setId("stage-" + stage.name().toLowerCase(java.util.Locale.ROOT));
      button.setAccessibleRole(AccessibleRole.TAB_ITEM);
      show(StationState.openAs(""));
    }

    /** Where room is short the state is told in the fewest words. */
    void narrow(boolean now) {
      if (narrow != now) {
        narrow = now;
        Pieces.style(button, "station-narrow", narrow);
        show(shown);
      }
    }

    void show(StationState state) {
      shown = state;
      words.setText(narrow ? state.brief() : state.words());
      Pieces.style(words, "error-text", state.sign() == StationState.Sign.ERROR);
      Pieces.style(words, "warning-text", state.sign() == StationState.Sign.WARNING);
      button.setAccessibleText(stage.title() + ", " + state.words());
    }
  }
}
