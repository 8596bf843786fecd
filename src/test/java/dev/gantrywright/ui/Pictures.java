package dev.gantrywright.ui;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.theme.Mode;
import dev.gantrywright.ui.theme.Typefaces;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.stage.Stage;
import javafx.util.Duration;
import javax.imageio.ImageIO;

/**
 * Makes pictures of every stage in both themes and two sizes: {@code Pictures DIR [NAME…]}, where a
 * NAME keeps the pictures whose file name holds it; or {@code Pictures --docs DIR}, those of the
 * documentation. See docs/window.md for the whole command.
 */
public final class Pictures {
  /** Time from one look at what is to be done next to the other, ms. */
  private static final int TURN = 30;

  /** After so many turns with nothing under way, what was worked out stands in the window. */
  private static final int RESTFUL = 5;

  private final Predicate<String> wanted;
  private final Taker taker;
  private static final String[] PARTS = {
    "endstops.zMin", "axes.z", "axes.e", "serial", "board", "printer", "heaters.bed", "build"
  };

  /** Every picture that is taken in one theme and size. */
  private static final String[] ALL =
      ("start compare describe describe-endstops-zMin describe-axes-z describe-axes-e describe-serial"
              + " describe-board describe-printer describe-heaters-bed describe-build names"
              + " names-pick names-boards names-zoom check write build load prove write-done"
              + " build-done load-done prove-proof prove-held zoom-held write-settings palette keys log zoom"
              + " zoom-board zoom-board-picture zoom-endstop zoom-describe zoom-check zoom-write zoom-build zoom-load"
              + " zoom-prove zoom-log zoom-log-half zoom-keys write-line"
              + " zoom-write-line rule-page")
          .split(" ");

  private final Deque<Step> steps = new ArrayDeque<>();
  private final CountDownLatch finished = new CountDownLatch(1);
  private volatile Throwable failure;
  private Thread.UncaughtExceptionHandler usual;
  private Stage stage;
  private WorkbenchWindow window;
  private ThreadPoolExecutor background;
  private int turns;

  private record Step(BooleanSupplier ready, Runnable act) {}

  /** What is done with the window as it stands. */
  interface Taker {
    void take(String name, Scene scene);
  }

  /**
   * @param wanted names of the pictures to take
   */
  Pictures(Predicate<String> wanted, Taker taker) {
    this.wanted = wanted;
    this.taker = taker;
  }

  public static void main(String[] args) throws Exception {
    // Its last window closed, the toolkit would end while this program does.
    Platform.setImplicitExit(false);
    if (args[0].equals("--docs")) {
      DocPictures taken = new DocPictures(Path.of(args[1]));
      Platform.startup(Typefaces::load);
      taken.take();
      taken.write();
    } else {
      Path folder = Files.createDirectories(Path.of(args[0]));
      List<String> parts = List.of(args).subList(1, args.length);
      Platform.startup(Typefaces::load);
      new Pictures(
              name -> parts.isEmpty() || parts.stream().anyMatch(name::contains),
              (name, scene) -> {
                save(folder.resolve(name + ".png"), scene);
                System.out.println(name);
              })
          .take();
    }
    System.exit(0);
  }

  /** Walks through the window and takes what is wanted; the toolkit runs already. */
  void take() throws Exception {
    String home = System.getProperty("user.home");
    Path data = Files.createTempDirectory("pictures");
    // Pictures show the workshop in the home folder of whoever reads them.
    System.setProperty("user.home", data.toString());
    try {
      // What goes wrong in the window would otherwise be waited for without end.
      Thread.UncaughtExceptionHandler told =
          (thread, failed) -> {
            failure = failed;
            finished.countDown();
          };
      Platform.runLater(
          () -> {
            usual = Thread.currentThread().getUncaughtExceptionHandler();
            Thread.currentThread().setUncaughtExceptionHandler(told);
            begin(data);
          });
      finished.await();
      Platform.runLater(() -> Thread.currentThread().setUncaughtExceptionHandler(usual));
      if (failure != null) {
        throw new IllegalStateException("the walk through the window ended early", failure);
      }
    } finally {
      System.setProperty("user.home", home);
    }
  }

  private void begin(Path data) {
    stage = new Stage();
    Path workshop = data.resolve("printers");
    try {
      DemoWorkshop.unpack(workshop);
    } catch (IOException failed) {
      throw new java.io.UncheckedIOException(failed);
    }
    Surroundings around = Surroundings.in(data, workshop);
    background = (ThreadPoolExecutor) around.background();
    window = new WorkbenchWindow(stage, around);
    window.show();
    for (int[] size : new int[][] {{1280, 720}, {1920, 1080}}) {
      for (Mode mode : Mode.values()) {
        plan(size, mode, workshop);
      }
    }
    next();
  }

  private void plan(int[] size, Mode mode, Path workshop) {
    String tail = "-" + mode.word() + "-" + size[0];
    Path heron = workshop.resolve("heron.printer.json");
    if (!any(tail)) {
      return;
    }
    shotsOf(size, mode, workshop, heron, tail);
  }

  /** Whether any picture is wanted whose name begins so. */
  private boolean any(String tail, String... starts) {
    for (String each : starts.length == 0 ? ALL : starts) {
      if (wanted.test(each + tail)) {
        return true;
      }
    }
    return false;
  }

  private void shotsOf(int[] size, Mode mode, Path workshop, Path heron, String tail) {
    step(
        () -> true,
        () -> {
          stage.setWidth(size[0]);
          stage.setHeight(size[1]);
          window.retheme(mode);
          window.showStart();
        });
    step(() -> window.workshop().printers().get().size() >= 3, () -> {});
    shot("start" + tail);
    if (any(tail, "compare")) {
      compare(tail);
    }
    step(() -> true, () -> window.begin(Optional.of(heron), true, ""));
    step(this::connected, () -> part("axes.x"));
    shot("describe" + tail);
    for (String part : PARTS) {
      step(() -> true, () -> part(part));
      shot("describe-" + part.replace('.', '-') + tail);
    }
    if (any(tail, "names", "names-pick", "names-boards", "names-zoom")) {
      names(tail);
    }
    for (dev.gantrywright.ui.state.Stage each : dev.gantrywright.ui.state.Stage.values()) {
      if (each != dev.gantrywright.ui.state.Stage.DESCRIBE) {
        step(() -> true, () -> window.printer().orElseThrow().stage().set(each));
        shot(each.name().toLowerCase(java.util.Locale.ROOT) + tail);
      }
    }
    if (any(tail, "write-done", "build-done", "load-done")) {
      buildThrough(workshop, tail);
    }
    if (any(
        tail,
        "prove-proof",
        "prove-held",
        "zoom-held",
        "write-settings",
        "palette",
        "keys",
        "log",
        "zoom",
        "zoom-board",
        "zoom-check",
        "zoom-write",
        "zoom-log")) {
      floating(tail);
    }
  }

  private void floating(String tail) {
    step(
        () -> true,
        () -> window.printer().orElseThrow().stage().set(dev.gantrywright.ui.state.Stage.PROVE));
    step(() -> true, () -> window.printer().orElseThrow().link().touch("xMin", true));
    step(() -> seen("xMin") == ContactState.TRIGGERED, () -> {});
    pause(1200);
    step(() -> true, () -> window.printer().orElseThrow().link().touch("xMin", false));
    step(() -> seen("xMin") == ContactState.OPEN, () -> {});
    step(
        () -> true,
        () ->
            window.printer().orElseThrow().link().prove(window.printer().orElseThrow().profile()));
    step(() -> window.printer().orElseThrow().link().proof().get().isPresent(), () -> {});
    shot("prove-proof" + tail);
    held(tail);
    step(() -> true, () -> window.scene().lookup("#write-settings"));
    step(() -> true, this::settings);
    shot("write-settings" + tail);
    step(() -> true, () -> toggle("#write-changes"));
    step(() -> true, this::chooseLine);
    shot("write-line" + tail);
    step(
        () -> true,
        () -> {
          var desk = window.printer().orElseThrow();
          desk.page().set(Optional.of(desk.notes().get(0)));
        });
    shot("rule-page" + tail);
    step(() -> true, () -> window.page().close());
    step(() -> true, () -> new WindowActs(window).find());
    shot("palette" + tail);
    step(
        () -> true,
        () -> {
          window.palette().close();
          window.keys().open();
        });
    shot("keys" + tail);
    step(
        () -> true,
        () -> {
          window.keys().close();
          window.desk().orElseThrow().line().pull();
        });
    shot("log" + tail);
    step(
        () -> true,
        () -> {
          window.desk().orElseThrow().line().pull();
          part("axes.x");
          window.rezoom(2);
        });
    shot("zoom" + tail);
    step(() -> true, () -> part("board"));
    shot("zoom-board" + tail);
    step(() -> true, this::scrollDown);
    shot("zoom-board-picture" + tail);
    step(() -> true, () -> part("endstops.zMin"));
    shot("zoom-endstop" + tail);
    step(() -> true, () -> part("axes.x"));
    for (var each : dev.gantrywright.ui.state.Stage.values()) {
      step(() -> true, () -> window.printer().orElseThrow().stage().set(each));
      shot("zoom-" + each.name().toLowerCase(java.util.Locale.ROOT) + tail);
    }
    step(() -> true, () -> window.desk().orElseThrow().line().pull());
    shot("zoom-log" + tail);
    step(() -> true, () -> window.rezoom(1.5));
    shot("zoom-log-half" + tail);
    step(() -> true, () -> window.rezoom(2));
    step(() -> true, () -> window.desk().orElseThrow().line().pull());
    step(() -> true, () -> window.keys().open());
    shot("zoom-keys" + tail);
    step(() -> true, () -> window.keys().close());
    step(() -> true, this::chooseLine);
    pause(300);
    step(() -> true, this::scrollToEnd);
    shot("zoom-write-line" + tail);
    step(() -> true, () -> window.rezoom(1));
  }

  /** One press in the trace, marked and held; at twice the size too. */
  private void held(String tail) {
    step(
        () -> true,
        () -> {
          press("#trace-mark");
          ((javafx.scene.control.TextField) window.scene().lookup("#trace-mark-1-words"))
              .setText("gantry pushed by hand");
          window.printer().orElseThrow().link().touch("yMin", true);
        });
    pause(900);
    step(() -> true, () -> window.printer().orElseThrow().link().touch("yMin", false));
    pause(700);
    step(
        () -> true,
        () -> {
          var look = window.printer().orElseThrow().look();
          look.span(5, 0);
          look.hold();
          look.point(look.right() - 1_200_000_000L);
        });
    step(() -> window.scene().lookup("#trace-about").isVisible(), () -> {});
    pause(100);
    step(() -> true, () -> scrollTo("#trace-marks"));
    shot("prove-held" + tail);
    step(() -> true, () -> window.rezoom(2));
    pause(200);
    step(() -> true, () -> scrollTo("#trace-reading"));
    shot("zoom-held" + tail);
    step(
        () -> true,
        () -> {
          window.rezoom(1);
          var look = window.printer().orElseThrow().look();
          look.goOn();
          look.span(20, 0);
          look.remove(1);
          scrollTo("#stage-title");
        });
  }

  /** Scrolls every sheet that holds a node so that it stands in the middle; to the top for none. */
  private void scrollTo(String selector) {
    javafx.scene.Node node = window.scene().lookup(selector);
    window.scene().getRoot().lookupAll(".scroll-pane").stream()
        .map(javafx.scene.control.ScrollPane.class::cast)
        .forEach(
            pane -> {
              var content = pane.getContent();
              double whole = content.getLayoutBounds().getHeight();
              double seen = pane.getViewportBounds().getHeight();
              double wanted = 0;
              for (javafx.scene.Node at = node; at != null; at = at.getParent()) {
                if (at == content) {
                  wanted =
                      content.sceneToLocal(node.localToScene(node.getLayoutBounds())).getCenterY()
                          - seen / 2;
                }
              }
              pane.setVvalue(whole > seen ? Math.max(0, Math.min(1, wanted / (whole - seen))) : 0);
            });
  }

  /** The names of the folder, one that asks, the boards, and all at twice the size. */
  private void names(String tail) {
    step(() -> true, () -> part("names"));
    step(() -> window.scene().lookup("#names-learn") != null, () -> {});
    pause(400);
    step(() -> !window.scene().lookup("#names-learn").isDisabled(), () -> {});
    shot("names" + tail);
    step(
        () -> true,
        () ->
            ((javafx.scene.control.TextField) window.scene().lookup("#names-pick"))
                .setText("speed"));
    shot("names-pick" + tail);
    step(() -> true, () -> toggle("#names-show-boards"));
    shot("names-boards" + tail);
    step(() -> true, () -> toggle("#names-show-fields"));
    step(() -> true, () -> window.rezoom(2));
    shot("names-zoom" + tail);
    step(() -> true, () -> window.rezoom(1));
  }

  private void chooseLine() {
    window.printer().orElseThrow().goToLine("serial.baud");
  }

  private void compare(String tail) {
    step(() -> window.scene().lookup("#start-compare") != null, () -> {});
    step(
        () -> true,
        () -> {
          window.scene().getRoot().lookupAll(".printer-row .check-box").stream()
              .limit(2)
              .forEach(box -> ((javafx.scene.control.CheckBox) box).fire());
          press("#start-compare");
        });
    shot("compare" + tail);
  }

  private void toggle(String id) {
    ((javafx.scene.control.ToggleButton) window.scene().lookup(id)).fire();
  }

  /** Mends Heron, writes its patched folder, builds it and copies the image onto a card. */
  private void buildThrough(Path workshop, String tail) {
    var write = dev.gantrywright.ui.state.Stage.WRITE;
    var build = dev.gantrywright.ui.state.Stage.BUILD;
    var load = dev.gantrywright.ui.state.Stage.LOAD;
    step(() -> true, () -> window.printer().orElseThrow().applySafe());
    step(this::settled, () -> window.printer().orElseThrow().stage().set(write));
    pause(300);
    step(() -> true, () -> press("#export"));
    pause(300);
    step(
        () ->
            window.scene().lookup("#export-open") != null
                || window.scene().lookup("#export-replace") != null,
        () -> {
          if (window.scene().lookup("#export-replace") != null) {
            press("#export-replace");
          }
        });
    step(() -> window.scene().lookup("#export-open") != null, () -> {});
    shot("write-done" + tail);
    step(() -> true, () -> window.printer().orElseThrow().stage().set(build));
    pause(300);
    step(() -> true, () -> press("#build-start"));
    pause(500);
    step(() -> !window.scene().lookup("#build-start").isDisabled(), () -> {});
    shot("build-done" + tail);
    step(() -> true, () -> window.printer().orElseThrow().stage().set(load));
    pause(300);
    step(
        () -> true,
        () -> {
          Path card = workshop.resolveSibling("card");
          card.toFile().mkdirs();
          ((javafx.scene.control.TextField) window.scene().lookup("#load-card"))
              .setText(dev.gantrywright.ui.quantity.HomePath.shown(card));
          press("#load-copy");
        });
    step(() -> !window.scene().lookup("#load-copy").isDisabled(), () -> {});
    shot("load-done" + tail);
    step(
        () -> true,
        () -> {
          var values = window.printer().orElseThrow().values();
          while (!values.history().get().isSaved()) {
            values.undo();
          }
        });
    step(
        () -> true,
        () -> window.printer().orElseThrow().stage().set(dev.gantrywright.ui.state.Stage.PROVE));
  }

  private boolean settled() {
    var desk = window.printer().orElseThrow();
    return desk.planned().get().revision() == desk.values().revision()
        && desk.judged().get().revision() == desk.values().revision();
  }

  private void press(String id) {
    ((javafx.scene.control.Button) window.scene().lookup(id)).fire();
  }

  private void settings() {
    window.printer().orElseThrow().stage().set(dev.gantrywright.ui.state.Stage.WRITE);
    ((javafx.scene.control.ToggleButton) window.scene().lookup("#write-settings")).fire();
  }

  private boolean connected() {
    return window.printer().isPresent()
        && window.printer().get().link().live().get().fresh()
        && settled()
        && window.printer().get().profile().name().equals("Heron");
  }

  private void scrollToEnd() {
    window.scene().getRoot().lookupAll(".sheet-scroll").stream()
        .map(javafx.scene.control.ScrollPane.class::cast)
        .forEach(pane -> pane.setVvalue(1));
  }

  /** Every sheet that can be seen, to its middle. */
  private void scrollDown() {
    window.scene().getRoot().lookupAll(".scroll-pane").stream()
        .map(javafx.scene.control.ScrollPane.class::cast)
        .forEach(pane -> pane.setVvalue(0.6));
  }

  private void part(String id) {
    window.printer().orElseThrow().part().set(id);
    window.printer().orElseThrow().stage().set(dev.gantrywright.ui.state.Stage.DESCRIBE);
  }

  private void step(BooleanSupplier ready, Runnable act) {
    steps.add(new Step(ready, act));
  }

  /** So long, and as many turns as an idle machine takes in that time. */
  private void pause(int millis) {
    long[] until = new long[1];
    step(
        () -> true,
        () -> {
          until[0] = System.nanoTime() + millis * 1_000_000L;
          turns = 0;
        });
    step(() -> ++turns > millis / TURN && System.nanoTime() > until[0], () -> {});
  }

  /** Until nothing that the window began behind itself is under way, and that has been shown. */
  private void rest() {
    step(() -> true, () -> turns = 0);
    step(
        () -> {
          boolean busy = background.getActiveCount() > 0 || !background.getQueue().isEmpty();
          turns = busy ? 0 : turns + 1;
          return turns > RESTFUL;
        },
        () -> {});
  }

  private ContactState seen(String end) {
    return window.printer().orElseThrow().link().live().get().of(end);
  }

  private void shot(String name) {
    if (wanted.test(name)) {
      pause(350);
      rest();
      step(() -> true, () -> taker.take(name, window.scene()));
    }
  }

  static void save(Path file, Scene scene) {
    WritableImage image = scene.snapshot(null);
    try {
      ImageIO.write(SwingFXUtils.fromFXImage(image, null), "png", file.toFile());
    } catch (IOException failed) {
      throw new java.io.UncheckedIOException(failed);
    }
  }

  private void next() {
    Step step = steps.peek();
    if (step == null) {
      window.close();
      stage.hide();
      finished.countDown();
      return;
    }
    if (step.ready().getAsBoolean()) {
      steps.remove();
      step.act().run();
    }
    PauseTransition pause = new PauseTransition(Duration.millis(TURN));
    pause.setOnFinished(done -> next());
    pause.play();
  }
}
