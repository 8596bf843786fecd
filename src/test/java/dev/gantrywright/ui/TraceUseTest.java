package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.draw.TraceStrips;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.TraceLook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hold the trace, look back, mark what happened, keep it: at the practice board. */
class TraceUseTest {
  private static final long SECOND = 1_000_000_000L;

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;
  private TraceLook look;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    look = desk.look();
    open.click("#stage-prove");
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private String words(String selector) throws Exception {
    Node node = open.find(selector).orElseThrow();
    return node instanceof Button button ? button.getText() : ((Label) node).getText();
  }

  private TraceStrips strips() throws Exception {
    return (TraceStrips) open.find("#trace").orElseThrow();
  }

  /** One press of the practice hand, until the window has seen both ends of it. */
  private void press(String end) throws Exception {
    boolean rest = desk.link().live().get().of(end) == ContactState.TRIGGERED;
    for (boolean on : new boolean[] {true, false}) {
      open.run(() -> desk.link().touch(end, on));
      open.until(() -> (desk.link().live().get().of(end) == ContactState.TRIGGERED) == (on ^ rest));
    }
  }

  @Test
  void aHeldPictureStandsStillWhileSamplesGoOnBeingKept() throws Exception {
    press("xMin");
    open.click("#trace-hold");
    assertThat(words("#trace-hold")).isEqualTo("Go on");
    assertThat(words("#trace-standing")).startsWith("Held at ").contains("What comes meanwhile");
    long painted = strips().paintings();
    long kept = open.on(() -> desk.link().trace().count());
    open.until(() -> desk.link().trace().count() > kept + 20);
    assertThat(strips().paintings()).as("no painting of a held picture").isEqualTo(painted);
    open.press(KeyCode.F8);
    assertThat(look.held().get()).isEmpty();
    open.until(() -> painted(painted));
  }

  private boolean painted(long before) {
    return ((TraceStrips) open.window().scene().lookup("#trace")).paintings() > before;
  }

  @Test
  void keysLookBackToTheChangeAndReadIt() throws Exception {
    open.until(() -> desk.link().trace().count() > 3);
    press("xMin");
    open.run(() -> open.window().scene().lookup("#trace").requestFocus());
    open.press(KeyCode.SPACE);
    open.press(KeyCode.CONTROL, KeyCode.LEFT);
    assertThat(words("#trace-reading")).contains("x min open");
    open.press(KeyCode.CONTROL, KeyCode.LEFT);
    assertThat(words("#trace-reading")).contains("x min triggered");
    long change = look.cursor().get().orElseThrow();
    open.press(KeyCode.LEFT);
    assertThat(look.cursor().get().orElseThrow())
        .isEqualTo(Math.max(look.all().first(), change - 20 * SECOND / 50));
    open.press(KeyCode.HOME);
    assertThat(look.cursor().get().orElseThrow()).isEqualTo(look.all().first());
    open.press(KeyCode.END);
    assertThat(look.cursor().get().orElseThrow()).isEqualTo(look.held().get().orElseThrow().at());
    String told = strips().getAccessibleText();
    open.until(() -> strips(told).contains("x min: open at first, 2 changes"));
  }

  private String strips(String otherwise) {
    String now = open.window().scene().lookup("#trace").getAccessibleText();
    return now == null ? otherwise : now;
  }

  @Test
  void theSpanIsChosenByButtonsAndKeysAndTheFiguresAreOfWhatIsShown() throws Exception {
    press("yMin");
    open.click("#trace-span-300");
    assertThat(look.span().get()).isEqualTo(300);
    open.until(() -> strip("yMin").contains("2 changes"));
    open.run(() -> open.window().scene().lookup("#trace").requestFocus());
    open.press(KeyCode.ADD);
    assertThat(look.span().get()).isEqualTo(60);
    assertThat(((ToggleButton) open.find("#trace-span-60").orElseThrow()).isSelected()).isTrue();
    open.click("#trace-span-2");
    // As soon as the press is over two seconds ago it is no longer in the picture.
    open.until(() -> strip("yMin").contains("no change"));
  }

  private String strip(String end) {
    return String.valueOf(open.window().scene().lookup("#trace-strip-" + end).getAccessibleText());
  }

  @Test
  void aMarkIsNamedShownTakenAwayAndComesBackByUndo() throws Exception {
    open.press(KeyCode.F9);
    open.until(() -> open.window().scene().lookup("#trace-mark-1-words") != null);
    assertThat(open.on(() -> open.window().scene().getFocusOwner().getId()))
        .isEqualTo("trace-mark-1-words");
    open.type("#trace-mark-1-words", "plug in");
    assertThat(look.list()).extracting(mark -> mark.text()).containsExactly("plug in");
    assertThat(open.find("#trace-flag-1")).isPresent();
    open.click("#trace-mark-1-show");
    assertThat(look.cursor().get().orElseThrow()).isEqualTo(look.list().get(0).nanos());
    open.click("#trace-mark-1-remove");
    assertThat(look.list()).isEmpty();
    assertThat(open.find("#trace-flag-1")).isEmpty();
    open.press(KeyCode.CONTROL, KeyCode.Z);
    assertThat(look.list()).hasSize(1);
    assertThat(((TextField) open.find("#trace-mark-1-words").orElseThrow()).getText())
        .isEqualTo("plug in");
  }

  @Test
  void whatIsKeptIsWhatThePracticeBoardDid() throws Exception {
    press("xMin");
    open.press(KeyCode.F9);
    open.type("#trace-mark-1-words", "between, \"two\"");
    press("yMin");
    press("xMin");
    open.click("#trace-keep");
    open.until(() -> !said().isEmpty());
    assertThat(said()).contains("heron.trace.csv").contains("1 mark");
    Path file = desk.printer().file().resolveSibling("heron.trace.csv");
    List<String> rows = Files.readAllLines(file);
    String heading = "seconds," + String.join(",", desk.link().trace().ends()) + ",mark";
    assertThat(rows.get(0)).isEqualTo(heading);
    int x = List.of(heading.split(",")).indexOf("xMin");
    int y = List.of(heading.split(",")).indexOf("yMin");
    List<String> done = new ArrayList<>();
    for (String row : rows.subList(1, rows.size())) {
      if (row.contains("between")) {
        assertThat(row).endsWith(",\"between, \"\"two\"\"\"");
        done.add("mark");
      }
      String now = row.split(",")[x] + " " + row.split(",")[y];
      if (done.isEmpty() || !done.get(done.size() - 1).equals(now)) {
        done.add(now);
      }
    }
    done.removeIf(each -> each.contains("unknown"));
    assertThat(done)
        .containsExactly(
            "open open",
            "triggered open",
            "open open",
            "mark",
            "open open",
            "open triggered",
            "open open",
            "triggered open",
            "open open");
    open.click("#trace-keep");
    open.until(() -> said().contains("heron.trace-2.csv"));
  }

  private String said() {
    return ((Label) open.window().scene().lookup("#trace-said")).getText();
  }

  @Test
  void aFolderThatIsGoneIsOneClearMessage() throws Exception {
    Path folder = desk.printer().file().getParent();
    Path away = folder.resolveSibling("away");
    Files.move(folder, away);
    try {
      open.click("#trace-keep");
      open.until(() -> !said().isEmpty());
      assertThat(said()).startsWith("The trace is not kept").contains("the folder is gone");
    } finally {
      Files.move(away, folder);
    }
  }

  @Test
  void whenTheLineIsGivenUpWhatWasSeenStandsThereUntilTheNextLine() throws Exception {
    press("xMin");
    open.click("#disconnect");
    open.until(() -> desk.link().status().get().kind() == LinkStatus.Kind.NONE);
    assertThat(words("#trace-standing")).startsWith("The line is closed.");
    open.until(() -> strip("xMin").contains("2 changes"));
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
    assertThat(look.held().get()).isEmpty();
  }

  @Test
  void theHandDragsThePictureBack() throws Exception {
    open.click("#trace-span-2");
    open.until(() -> span(desk.link().trace().all().nanos()) > 3 * SECOND);
    open.click("#trace");
    open.run(
        () -> {
          Node picture = open.window().scene().lookup("#trace");
          var at = picture.localToScreen(picture.getLayoutBounds());
          var robot = new javafx.scene.robot.Robot();
          robot.mouseMove(at.getCenterX(), at.getCenterY());
          robot.mousePress(javafx.scene.input.MouseButton.PRIMARY);
        });
    open.run(
        () -> {
          Node picture = open.window().scene().lookup("#trace");
          var at = picture.localToScreen(picture.getLayoutBounds());
          var robot = new javafx.scene.robot.Robot();
          robot.mouseMove(at.getCenterX() + 60, at.getCenterY());
          robot.mouseRelease(javafx.scene.input.MouseButton.PRIMARY);
        });
    open.until(() -> look.held().get().isPresent());
    TraceLook.Held held = look.held().get().orElseThrow();
    assertThat(held.right()).isLessThan(held.at());
    assertThat(words("#trace-standing")).contains("The picture ends at");
  }

  private static long span(long[] nanos) {
    return nanos.length == 0 ? 0 : nanos[nanos.length - 1] - nanos[0];
  }
}
