package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.ui.state.FolderDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.theme.Typefaces;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.testfx.util.WaitForAsyncUtils;

/** A window of the workbench on the demo workshop in a folder of its own, for one test. */
final class OpenWindow implements AutoCloseable {
  /** So long a machine that is busy with other work may take for anything, seconds. */
  private static final long LIMIT = 120;

  private static Throwable unusable;
  private static boolean started;

  private final Path data;
  private Surroundings around;
  private WorkbenchWindow window;
  private final List<Path> shownFolders = new ArrayList<>();
  private volatile List<PortDescription> plugged = List.of();
  private Stage stage;

  /**
   * Opens the window.
   *
   * <p>Skips the test visibly where this machine lacks what JavaFX needs to draw text.
   */
  OpenWindow(Path data) throws Exception {
    this(data, UnaryOperator.identity());
  }

  /** The same with another way to read a folder that is named anew. */
  OpenWindow(Path data, UnaryOperator<FolderDesk.Reading> reading) throws Exception {
    toolkit();
    this.data = data;
    DemoWorkshop.unpack(workshop());
    on(
        () -> {
          stage = new Stage();
          Surroundings usual = Surroundings.in(data, workshop());
          around =
              usual
                  .folders(reading.apply(usual.reading()), shownFolders::add)
                  .ports(this::pluggedIn);
          window = new WorkbenchWindow(stage, around);
          stage.setX(0);
          stage.setY(0);
          stage.setWidth(1280);
          stage.setHeight(720);
          window.show();
          return null;
        });
  }

  /** Starts JavaFX; skips the test visibly where this machine lacks what it needs to draw text. */
  static synchronized void toolkit() throws InterruptedException {
    if (!started) {
      started = true;
      CountDownLatch up = new CountDownLatch(1);
      try {
        Platform.startup(
            () -> {
              Platform.setImplicitExit(false);
              try {
                Typefaces.load();
                new javafx.scene.text.Text("proof").getLayoutBounds();
              } catch (Throwable noText) {
                unusable = noText;
              }
              up.countDown();
            });
        if (!up.await(LIMIT, TimeUnit.SECONDS)) {
          unusable = new IllegalStateException("the toolkit did not start");
        }
      } catch (IllegalStateException running) {
        up.countDown();
      } catch (Throwable noToolkit) {
        unusable = noToolkit;
      }
    }
    assumeTrue(unusable == null, () -> "JavaFX cannot draw text here: " + unusable);
  }

  Path workshop() {
    return data.resolve("harbour-street-workshop");
  }

  /** Opens Heron and waits until it has been checked. */
  PrinterDesk heron() throws Exception {
    Path file = workshop().resolve("heron.printer.json");
    on(
        () -> {
          window.open(file);
          return null;
        });
    until(() -> window.printer().map(desk -> settled(desk)).orElse(false));
    return window.printer().orElseThrow();
  }

  private static boolean settled(PrinterDesk desk) {
    long now = desk.values().revision();
    return desk.judged().get().revision() == now && desk.planned().get().revision() == now;
  }

  /** Waits until checks and plan belong to the profile as it stands. */
  void settle() throws Exception {
    until(() -> settled(window.printer().orElseThrow()));
  }

  /** Stands for what is plugged into the computer; nothing is, at first. */
  void plug(List<PortDescription> ports) {
    plugged = ports;
  }

  private List<PortDescription> pluggedIn() {
    return plugged;
  }

  /** The folders that the system was asked to open. */
  List<Path> shownFolders() {
    return shownFolders;
  }

  WorkbenchWindow window() {
    return window;
  }

  /** Runs on the toolkit's thread and waits for it. */
  <T> T on(Callable<T> act) throws Exception {
    FutureTask<T> task = new FutureTask<>(act);
    Platform.runLater(task);
    return task.get(LIMIT, TimeUnit.SECONDS);
  }

  void run(Runnable act) throws Exception {
    on(
        () -> {
          act.run();
          return null;
        });
  }

  void until(BooleanSupplier reached) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LIMIT);
    while (!on(reached::getAsBoolean)) {
      assertThat(System.nanoTime()).as("reached in time").isLessThan(end);
      Thread.sleep(20);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }

  Optional<Node> find(String selector) throws Exception {
    return on(() -> Optional.ofNullable(lookup(selector)));
  }

  /** The first node that a user can see; where none can be seen, the first of all. */
  private Node lookup(String selector) {
    Node seen =
        window.scene().getRoot().lookupAll(selector).stream()
            .filter(OpenWindow::visible)
            .findFirst()
            .orElse(null);
    return seen != null ? seen : window.scene().lookup(selector);
  }

  /** What stands in something hidden is hidden too. */
  private static boolean visible(Node node) {
    for (Node at = node; at != null; at = at.getParent()) {
      if (!at.isVisible()) {
        return false;
      }
    }
    return true;
  }

  /** Clicks a node with the mouse. */
  void click(String selector) throws Exception {
    until(() -> shown(selector));
    run(
        () -> {
          Node node = lookup(selector);
          scrollTo(node);
          // What is still to be laid out would move the node away from where it is clicked.
          window.scene().getRoot().applyCss();
          window.scene().getRoot().layout();
          Bounds at = node.localToScreen(node.getLayoutBounds());
          Robot robot = new Robot();
          robot.mouseMove(at.getCenterX(), at.getCenterY());
          robot.mouseClick(javafx.scene.input.MouseButton.PRIMARY);
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Scrolls as a user does until the node can be seen. */
  private static void scrollTo(Node node) {
    for (Node at = node.getParent(); at != null; at = at.getParent()) {
      if (at instanceof ScrollPane pane && pane.getContent() != null) {
        Node content = pane.getContent();
        content.applyCss();
        double whole = content.getLayoutBounds().getHeight();
        double seen = pane.getViewportBounds().getHeight();
        Bounds in = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
        if (whole > seen) {
          double wanted = (in.getMinY() + in.getMaxY() - seen) / 2;
          pane.setVvalue(Math.max(0, Math.min(1, wanted / (whole - seen))));
          pane.layout();
        }
      }
    }
  }

  private boolean shown(String selector) {
    Node node = lookup(selector);
    return node != null && visible(node) && node.getLayoutBounds().getWidth() > 0;
  }

  /** Gives a field the keyboard, as the Tab key does, and replaces what stands in it. */
  void type(String selector, String text) throws Exception {
    until(() -> shown(selector));
    run(() -> lookup(selector).requestFocus());
    press(KeyCode.CONTROL, KeyCode.A);
    for (char each : text.toCharArray()) {
      run(
          () -> {
            Node owner = window.scene().getFocusOwner();
            owner.fireEvent(
                new javafx.scene.input.KeyEvent(
                    javafx.scene.input.KeyEvent.KEY_TYPED,
                    String.valueOf(each),
                    "",
                    KeyCode.UNDEFINED,
                    false,
                    false,
                    false,
                    false));
          });
    }
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Presses a key twice as fast as a key can be pressed. */
  void pressTwice(KeyCode key) throws Exception {
    run(
        () -> {
          Robot robot = new Robot();
          for (int i = 0; i < 2; i++) {
            robot.keyPress(key);
            robot.keyRelease(key);
          }
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Presses keys together, the last one shortest. */
  void press(KeyCode... keys) throws Exception {
    run(
        () -> {
          Robot robot = new Robot();
          for (KeyCode key : keys) {
            robot.keyPress(key);
          }
          for (int i = keys.length - 1; i >= 0; i--) {
            robot.keyRelease(keys[i]);
          }
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** Waits until nothing that the window began behind itself is under way. */
  void atRest() throws Exception {
    ThreadPoolExecutor pool = (ThreadPoolExecutor) around.background();
    until(() -> pool.getActiveCount() == 0 && pool.getQueue().isEmpty());
  }

  /** Ends as a kill does: nothing is closed or saved on the way out. */
  void kill() throws Exception {
    run(() -> stage.hide());
    rest();
  }

  /**
   * Waits for what still runs behind the window, so that nothing writes into a folder that goes.
   */
  private void rest() throws Exception {
    WaitForAsyncUtils.waitForFxEvents();
    if (around.background() instanceof ThreadPoolExecutor pool) {
      pool.setRejectedExecutionHandler(new ThreadPoolExecutor.DiscardPolicy());
    }
    around.background().shutdown();
    around.background().awaitTermination(LIMIT, TimeUnit.SECONDS);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Override
  public void close() throws Exception {
    run(
        () -> {
          window.close();
          stage.hide();
        });
    window.remembered();
    rest();
  }
}
