package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.ui.draw.MachinePlan;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.draw.PlanContent;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.Part;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** The machine plan with the outline of its parts, for eyes, keys and screen readers. */
public final class PlanColumn extends VBox implements Subscription {
  private static final int ROWS = 6;

  private final PrinterDesk desk;
  private final Supplier<PlanContent> content;
  private final MachinePlan plan;
  private final GridPane outline = new GridPane();
  private final Map<String, ToggleButton> buttons = new LinkedHashMap<>();
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param content what the plan shows now
   */
  public PlanColumn(PrinterDesk desk, Supplier<PlanContent> content) {
    this.desk = desk;
    this.content = content;
    this.plan = new MachinePlan(desk::goTo);
    plan.setAccessibleText(Texts.of("plan.title"));
    getStyleClass().add("plan-column");
    Label title = new Label(Texts.of("plan.title"));
    title.getStyleClass().add("quiet");
    Label parts = new Label(Texts.of("plan.parts"));
    parts.getStyleClass().add("quiet");
    VBox.setVgrow(plan, Priority.ALWAYS);
    outline.setHgap(4);
    outline.setVgap(0);
    getChildren().addAll(title, plan, parts, outline);
    subscriptions.add(desk.values().history().observe(history -> refresh()));
    subscriptions.add(desk.opened().listen(opened -> refresh()));
    subscriptions.add(desk.judged().listen(judged -> refresh()));
    subscriptions.add(desk.part().listen(part -> refresh()));
    subscriptions.add(desk.stage().listen(stage -> refresh()));
  }

  /** Draws again what has changed. */
  public void refresh() {
    List<Part> parts = desk.parts();
    if (!parts.stream().map(Part::id).toList().equals(List.copyOf(buttons.keySet()))) {
      build(parts);
    }
    Map<String, Gravity> marks = desk.marks();
    buttons.forEach((id, button) -> mark(id, button, marks.get(id)));
    plan.show(content.get());
  }

  private void mark(String id, ToggleButton button, Gravity gravity) {
    // On another stage no part is in hand.
    button.setSelected(desk.stage().get() == Stage.DESCRIBE && id.equals(desk.part().get()));
    if (button.getUserData() != gravity) {
      button.setUserData(gravity);
      sign(button, gravity);
    }
    String words = button.getText() + (gravity == null ? "" : ", " + gravity.word());
    button.setAccessibleText(words);
    Endstop endstop = desk.profile().endstops().get(id.substring(id.indexOf('.') + 1));
    boolean absent =
        id.startsWith("endstops.") && (endstop == null || !Boolean.TRUE.equals(endstop.fitted()));
    if (absent && !button.getStyleClass().contains("outline-absent")) {
      button.getStyleClass().add("outline-absent");
    } else if (!absent) {
      button.getStyleClass().remove("outline-absent");
    }
  }

  /** A sign that was shown once is hidden, not thrown away: it comes and goes with keystrokes. */
  private static void sign(ToggleButton button, Gravity gravity) {
    if (!(button.getGraphic() instanceof StackPane signs)) {
      button.setGraphic(gravity == null ? null : new StackPane(Mark.of(gravity).sign(10)));
      return;
    }
    String word = gravity == null ? "" : Mark.of(gravity).word();
    signs.getChildren().forEach(sign -> sign.setVisible(word.equals(sign.getAccessibleText())));
    if (gravity != null && signs.getChildren().stream().noneMatch(Node::isVisible)) {
      signs.getChildren().add(Mark.of(gravity).sign(10));
    }
  }

  private void build(List<Part> parts) {
    buttons.clear();
    outline.getChildren().clear();
    List<List<Part>> columns =
        List.of(
            parts.stream().filter(part -> part.id().indexOf('.') < 0).toList(),
            parts.stream()
                .filter(part -> part.id().startsWith("axes.") || part.id().startsWith("heaters."))
                .toList(),
            parts.stream().filter(part -> part.id().startsWith("endstops.")).toList());
    for (int column = 0; column < columns.size(); column++) {
      List<Part> each = columns.get(column);
      for (int row = 0; row < each.size(); row++) {
        ToggleButton button = button(each.get(row));
        outline.add(button, column + row / ROWS, row % ROWS);
      }
    }
    // A wide column of parts is spread over the width of the plan above it.
    int used = outline.getColumnCount();
    outline.getColumnConstraints().clear();
    for (int column = 0; column < used; column++) {
      ColumnConstraints grows = new ColumnConstraints();
      grows.setHgrow(Priority.ALWAYS);
      outline.getColumnConstraints().add(grows);
    }
    // The map keeps the order of the parts, whatever the columns are.
    Map<String, ToggleButton> ordered = new LinkedHashMap<>();
    parts.forEach(part -> ordered.put(part.id(), buttons.get(part.id())));
    buttons.clear();
    buttons.putAll(ordered);
  }

  private ToggleButton button(Part part) {
    ToggleButton button = new ToggleButton(part.title());
    button.getStyleClass().setAll("outline-button");
    button.setId("part-" + part.id().replace('.', '-'));
    button.setMinWidth(92);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(
        click -> {
          desk.part().set(part.id());
          desk.stage().set(Stage.DESCRIBE);
          refresh();
        });
    button.addEventFilter(KeyEvent.KEY_PRESSED, this::keyed);
    buttons.put(part.id(), button);
    return button;
  }

  /** Up and Down walk the parts and open them. */
  private void keyed(KeyEvent key) {
    List<String> ids = List.copyOf(buttons.keySet());
    int step =
        switch (key.getCode()) {
          case DOWN -> 1;
          case UP -> -1;
          default -> 0;
        };
    if (step != 0) {
      int next = Math.floorMod(ids.indexOf(desk.part().get()) + step, ids.size());
      desk.part().set(ids.get(next));
      buttons.get(ids.get(next)).requestFocus();
      key.consume();
    }
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
