package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.draw.BoardPlan;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The picture of the board: it follows what is typed, and leads to the part plugged in. */
class BoardPictureUseTest {
  /** Half an em of twelve pixels. */
  private static final double APART = 6;

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.click("#part-board");
    open.until(() -> plan() != null);
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private BoardPlan plan() {
    return (BoardPlan)
        open.window().scene().getRoot().lookupAll("*").stream()
            .filter(node -> node instanceof BoardPlan)
            .findFirst()
            .orElse(null);
  }

  private List<String> drawn() throws Exception {
    return open.on(
        () ->
            plan().lookupAll(".draw-text").stream().map(text -> ((Text) text).getText()).toList());
  }

  @Test
  void itShowsWhatIsPluggedInWhere() throws Exception {
    assertThat(drawn())
        .contains("Fulmar M4", "STM32F405RG", "X axis", "Extruder", "STOP3", "z min", "FULMAR.IMG")
        .contains("PB10 is taken twice: UART to the drivers, console");
    assertThat(plan().getAccessibleText()).contains("socket A TMC2209, PB0 PB1 PB12 PB10: X axis");
  }

  /**
   * A head that touches the next one reads as one word: half an em of the drawing's type is kept.
   */
  @Test
  void noTwoWordsOfOneLineTouch() throws Exception {
    List<String> close =
        open.on(
            () -> {
              open.window().scene().getRoot().applyCss();
              open.window().scene().getRoot().layout();
              List<Text> words =
                  plan().lookupAll(".draw-text").stream()
                      .map(Text.class::cast)
                      .filter(text -> !text.getText().isEmpty())
                      .sorted(Comparator.comparingDouble(text -> left(text)))
                      .toList();
              List<String> found = new ArrayList<>();
              for (Text one : words) {
                for (Text next : words) {
                  boolean beside = Math.abs(one.getY() - next.getY()) < 6;
                  double between = left(next) - right(one);
                  if (one != next && beside && left(next) >= left(one) && between < APART) {
                    found.add(one.getText() + " | " + next.getText() + ": " + between);
                  }
                }
              }
              return found;
            });
    assertThat(close).isEmpty();
  }

  private static double left(Text text) {
    return text.getBoundsInParent().getMinX();
  }

  private static double right(Text text) {
    return text.getBoundsInParent().getMaxX();
  }

  @Test
  void itFollowsWhatIsTyped() throws Exception {
    open.type("#edit-board-mcu", "ATmega1281");
    open.until(() -> drawnNow().contains("The profile says ATmega1281."));
    open.run(() -> desk.values().edit("endstops.zMin.pin", "STOP6"));
    open.until(() -> plan().getAccessibleText().contains("input STOP6, PC5: z min"));
    assertThat(plan().getAccessibleText()).contains("input STOP3, PC2: free");
    open.run(() -> desk.values().edit("serial.port", 1));
    open.until(() -> drawnNow().stream().noneMatch(text -> text.contains("taken twice")));
  }

  private List<String> drawnNow() {
    return plan().lookupAll(".draw-text").stream().map(text -> ((Text) text).getText()).toList();
  }

  @Test
  void aClickOnASocketOpensItsAxis() throws Exception {
    open.click("#board-opens-axes-y");
    open.until(() -> desk.part().get().equals("axes.y"));
    open.click("#part-board");
    open.click("#board-opens-heaters-bed");
    open.until(() -> desk.part().get().equals("heaters.bed"));
  }
}
