package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The board of the machine plan has as many driver places as its sheet states. */
class PlanUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private List<Node> places() {
    return open.window().scene().getRoot().lookupAll(".fine").stream()
        .filter(node -> node.getId() != null && node.getId().startsWith("driver-"))
        .toList();
  }

  private List<String> words() {
    return open.window().scene().getRoot().lookupAll(".draw-text").stream()
        .map(node -> ((Text) node).getText())
        .toList();
  }

  /** A sheet with free places besides those of the axes. */
  private void sheet(String name, int more) throws Exception {
    Path home = open.workshop();
    JsonMapper mapper = JsonMapper.shared();
    ObjectNode sheet =
        (ObjectNode) mapper.readTree(Files.readString(home.resolve("fulmar-m4.board.json")));
    ObjectNode sockets = (ObjectNode) sheet.get("sockets");
    for (int i = 0; i < more; i++) {
      sockets.set("F" + i, sockets.get("A").deepCopy());
    }
    Files.writeString(home.resolve(name), mapper.writeValueAsString(sheet));
    open.run(() -> desk.values().edit("board.sheet", name));
  }

  @Test
  void eachPlaceOfTheSheetIsDrawnWithItsAxis() throws Exception {
    open.until(() -> places().size() == 4);
    assertThat(open.on(this::words)).contains("X", "Y", "Z", "E");
    sheet("eight.board.json", 4);
    open.until(() -> places().size() == 8);
    assertThat(open.on(this::places)).noneMatch(node -> node.getStyleClass().contains("dashed"));
    sheet("many.board.json", 20);
    open.until(() -> places().size() == 24);
    double right = open.on(this::rightmost);
    Node plan = open.find(".plan-column").orElseThrow();
    assertThat(right).isLessThan(plan.localToScene(plan.getLayoutBounds()).getMaxX());
  }

  private double rightmost() {
    return places().stream()
        .mapToDouble(node -> node.localToScene(node.getBoundsInLocal()).getMaxX())
        .max()
        .orElseThrow();
  }

  @Test
  void withoutASheetThePlacesOfTheProfileAreDashedAndThePlanSaysWhy() throws Exception {
    open.run(() -> desk.values().edit("board.sheet", null));
    open.until(() -> words().contains("no board sheet"));
    assertThat(open.on(this::places))
        .hasSize(4)
        .allMatch(node -> node.getStyleClass().contains("dashed"));
    open.run(() -> desk.values().undo());
    open.until(() -> words().contains("Fulmar M4"));
  }
}
