package dev.gantrywright.ui.shell;

import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The one surface: header, route, folder strip, plan beside the stage in hand, line strip. */
public final class Bench extends VBox implements Subscription {
  /** Stages beside which the machine plan stands; the others need the width. */
  private static final Set<Stage> WITH_PLAN = EnumSet.of(Stage.DESCRIBE, Stage.CHECK, Stage.PROVE);

  private static final double PLAN_WIDTH = 344;
  private static final double MOST_PLAN = 460;
  private static final double PLAN_SHARE = 0.27;

  /** Below this width the plan gives way to the part in hand. */
  private static final double NARROW = 960;

  /** Of the stage beside a log that is pulled up: three fields with their labels, pixels. */
  private static final double LEAST_STAGE = 120;

  private final Map<Stage, Supplier<? extends Node>> makers;
  private final Map<Stage, Node> made = new EnumMap<>(Stage.class);
  private final Region plan;
  private final HBox middle;
  private final LinePanel line;
  private final List<Region> others;
  private Node inHandBefore;
  private final SheetScroll place = new SheetScroll();
  private Stage stage = Stage.DESCRIBE;

  public Bench(
      HeaderBar header,
      RouteBar route,
      Region folder,
      Region plan,
      Map<Stage, Supplier<? extends Node>> stages,
      LinePanel line) {
    this.plan = plan;
    this.line = line;
    this.others = List.of(header, route, folder);
    this.makers = stages;
    getStyleClass().add("bench");
    middle = new HBox(plan, place);
    HBox.setHgrow(place, Priority.ALWAYS);
    place.setMinSize(0, 0);
    // It takes the room that is left, so nobody need measure all that stands in it.
    place.setPrefSize(0, 0);
    // At twice the size a stage may be higher than its room: it scrolls rather than lie over
    // others.
    place.setFitToHeight(true);
    place.setHbarPolicy(SheetScroll.ScrollBarPolicy.NEVER);
    middle.setMinWidth(0);
    setMinWidth(0);
    middle.setMinHeight(0);
    VBox.setVgrow(middle, Priority.ALWAYS);
    getChildren().addAll(header, route, folder, middle, line);
    widthProperty().addListener((o, before, now) -> fit());
    line.pulled().addListener((o, before, now) -> pulled(now));
    line.heightProperty().addListener((o, before, now) -> share());
    heightProperty().addListener((o, before, now) -> share());
  }

  /** Let down, the log gives the keyboard back to what had it. */
  private void pulled(boolean up) {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    if (up) {
      inHandBefore = owner;
      share();
      return;
    }
    share();
    boolean lost = owner == null || within(owner, line);
    if (lost && inHandBefore != null && within(inHandBefore, this)) {
      inHandBefore.requestFocus();
    }
    inHandBefore = null;
  }

  /**
   * Where the window is too low for both, the log takes the stage's place until it is let down:
   * what cannot be seen is not reached by the keyboard either.
   */
  private void share() {
    double left = getHeight() - line.minHeight(getWidth());
    for (Region each : others) {
      left -= each.isManaged() ? each.prefHeight(getWidth()) : 0;
    }
    boolean over = line.pulled().get() && getHeight() > 0 && left < LEAST_STAGE;
    if (over == middle.isManaged()) {
      middle.setManaged(!over);
      middle.setVisible(!over);
      VBox.setVgrow(line, over ? Priority.ALWAYS : Priority.NEVER);
    }
  }

  /** Lets the log down where it stands in the place of the stage, or has the keyboard. */
  public boolean letLogDown() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    boolean asked = line.pulled().get() && (!middle.isManaged() || within(owner, line));
    if (asked) {
      line.pull();
    }
    return asked;
  }

  private static boolean within(Node node, Node holder) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (at == holder) {
        return true;
      }
    }
    return false;
  }

  /** Shows a stage; its view is made when it is first looked at. */
  public void show(Stage next) {
    stage = next;
    place.setContent(made.computeIfAbsent(next, each -> makers.get(each).get()));
    place.setVvalue(0);
    fit();
  }

  private void fit() {
    boolean beside = WITH_PLAN.contains(stage) && getWidth() >= NARROW;
    double wide = Math.max(PLAN_WIDTH, Math.min(MOST_PLAN, getWidth() * PLAN_SHARE));
    plan.setMinWidth(wide);
    plan.setPrefWidth(wide);
    plan.setMaxWidth(wide);
    plan.setVisible(beside);
    plan.setManaged(beside);
  }

  /** The view of the stage in hand. */
  public Node inHand() {
    return place.getContent();
  }

  @Override
  public void close() {
    for (Node view : made.values()) {
      if (view instanceof Subscription closing) {
        closing.close();
      }
    }
  }
}
