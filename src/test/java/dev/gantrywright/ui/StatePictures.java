package dev.gantrywright.ui;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.theme.Mode;
import dev.gantrywright.ui.theme.Typefaces;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.stage.Stage;

/**
 * Makes pictures of the window where something is missing, wrong or under way: {@code StatePictures
 * DIR [light|dark] [WIDTH HEIGHT ZOOM]}; started as {@link Pictures} is.
 */
public final class StatePictures {

  private final Path folder;
  private final Mode mode;
  private final double width;
  private final double height;
  private final double zoom;
  WorkbenchWindow window;
  Path data;
  private Stage stage;

  private StatePictures(Path folder, Mode mode, double width, double height, double zoom) {
    this.folder = folder;
    this.mode = mode;
    this.width = width;
    this.height = height;
    this.zoom = zoom;
  }

  public static void main(String[] args) throws Exception {
    Platform.setImplicitExit(false);
    Platform.startup(Typefaces::load);
    try {
      take(args);
    } catch (Exception | Error failed) {
      failed.printStackTrace();
      System.exit(1);
    }
    System.exit(0);
  }

  private static void take(String[] args) throws Exception {
    boolean sized = args.length > 4;
    new StatePictures(
            Files.createDirectories(Path.of(args[0])),
            args.length > 1 && args[1].equals("dark") ? Mode.DARK : Mode.LIGHT,
            sized ? Double.parseDouble(args[2]) : 1280,
            sized ? Double.parseDouble(args[3]) : 720,
            sized ? Double.parseDouble(args[4]) : 1)
        .take();
  }

  private void take() throws Exception {
    if (Boolean.getBoolean("states.log")) {
      new RareStates(this).log();
      return;
    }
    if (Boolean.getBoolean("states.rare")) {
      rare();
      return;
    }
    empty();
    bare();
    folderGone();
    missingTool();
    cards();
    line();
    rare();
  }

  private void rare() throws Exception {
    RareStates rare = new RareStates(this);
    rare.longNames();
    rare.manyFindings();
    rare.longFolder();
    rare.heatUp();
    rare.log();
  }

  private void empty() throws Exception {
    open(false);
    shot("start-empty");
    Files.createDirectories(data.resolve("printers"));
    Files.writeString(data.resolve("printers/broken.printer.json"), "{\"format\": 12, \"name\"");
    run(() -> window.showStart());
    pause(600);
    shot("start-unreadable");
    run(() -> window.open(data.resolve("printers/broken.printer.json")));
    pause(600);
    shot("start-open-unreadable");
    run(() -> window.open(data.resolve("printers/gone.printer.json")));
    pause(600);
    shot("start-open-gone");
    close();
  }

  private void bare() throws Exception {
    open(true);
    Path file = data.resolve("printers/wren.printer.json");
    Files.writeString(file, "{\"format\": 1, \"name\": \"Wren\"}");
    openPrinter(file);
    stages("bare");
    run(() -> desk().part().set("names"));
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.DESCRIBE));
    pause(600);
    shot("bare-names");
    run(() -> desk().part().set("board"));
    pause(400);
    shot("bare-board");
    close();
  }

  private void folderGone() throws Exception {
    open(true);
    Files.move(data.resolve("printers/rookery-2.3"), data.resolve("elsewhere"));
    openPrinter(data.resolve("printers/heron.printer.json"));
    stages("gone");
    run(() -> desk().part().set("names"));
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.DESCRIBE));
    pause(600);
    shot("gone-names");
    close();
  }

  private void missingTool() throws Exception {
    open(true);
    Path heron = data.resolve("printers/heron.printer.json");
    openPrinter(heron);
    run(() -> desk().applySafe());
    pause(500);
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.WRITE));
    until(() -> window.scene().lookup("#export") != null);
    run(() -> press("#export"));
    shotNow("write-busy");
    until(() -> window.scene().lookup("#export-open") != null);
    shot("write-done");
    run(() -> press("#export"));
    pause(400);
    shot("write-again");
    run(() -> desk().values().edit("build.command", java.util.List.of("no-such-tool", "--fast")));
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.BUILD));
    pause(400);
    run(() -> press("#build-start"));
    pause(1500);
    shot("build-missing-tool");
    run(() -> desk().values().edit("build.command", java.util.List.of("sleep", "4")));
    pause(400);
    run(() -> press("#build-start"));
    pause(1300);
    shot("build-busy");
    pause(4000);
    shot("build-no-image");
    close();
  }

  private void cards() throws Exception {
    open(true);
    openPrinter(data.resolve("printers/heron.printer.json"));
    run(() -> desk().applySafe());
    pause(500);
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.WRITE));
    until(() -> window.scene().lookup("#export") != null);
    run(() -> press("#export"));
    until(() -> window.scene().lookup("#export-open") != null);
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.BUILD));
    pause(400);
    run(() -> press("#build-start"));
    pause(1000);
    until(() -> !window.scene().lookup("#build-start").isDisabled());
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.LOAD));
    pause(400);
    copyTo(data.resolve("no-card").toString(), "load-absent");
    // Cards that only an administrator can lay in: mount -t tmpfs -o ro,size=1m tmpfs /tmp/rocard
    Path readOnly = Path.of("/tmp/rocard");
    copyTo(Files.isDirectory(readOnly) ? readOnly.toString() : "/proc", "load-read-only");
    if (Files.isDirectory(Path.of("/tmp/tinycard"))) {
      copyTo("/tmp/tinycard", "load-full");
    }
    Files.createDirectories(data.resolve("card"));
    copyTo(data.resolve("card").toString(), "load-copied");
    close();
  }

  void copyTo(String card, String name) throws Exception {
    run(() -> ((TextField) window.scene().lookup("#load-card")).setText(card));
    pause(200);
    run(() -> press("#load-copy"));
    pause(1500);
    shot(name);
  }

  private void line() throws Exception {
    open(true);
    openPrinter(data.resolve("printers/heron.printer.json"));
    run(() -> desk().stage().set(dev.gantrywright.ui.state.Stage.PROVE));
    pause(400);
    shot("prove-empty");
    run(() -> desk().link().connect(desk().profile(), new PortAddress.Tcp("127.0.0.1", 9), 20));
    pause(800);
    shot("prove-refused");
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      int port = server.getLocalPort();
      run(
          () ->
              desk().link().connect(desk().profile(), new PortAddress.Tcp("127.0.0.1", port), 20));
      try (Socket board = server.accept()) {
        pause(700);
        shot("prove-connecting");
        answer(board);
        pause(200);
      }
    }
    pause(1500);
    shot("prove-unplugged");
    run(() -> desk().link().connect(desk().profile(), new PortAddress.Practice(""), 20));
    until(() -> desk().link().live().get().fresh());
    run(() -> desk().link().prove(desk().profile()));
    shotNow("prove-busy");
    close();
  }

  /** Answers what a board answers, for two seconds. */
  private static void answer(Socket board) throws Exception {
    board.setSoTimeout(200);
    long end = System.nanoTime() + 2_000_000_000L;
    byte[] room = new byte[256];
    while (System.nanoTime() < end) {
      try {
        int count = board.getInputStream().read(room);
        if (count < 0) {
          return;
        }
        String asked = new String(room, 0, count, StandardCharsets.US_ASCII);
        for (int i = 0; i < asked.length(); i++) {
          if (asked.charAt(i) == '\n') {
            board
                .getOutputStream()
                .write(
                    "x_min: open\ny_min: open\nz_min: TRIGGERED\nok\n"
                        .getBytes(StandardCharsets.US_ASCII));
          }
        }
        board.getOutputStream().flush();
      } catch (java.net.SocketTimeoutException none) {
        continue;
      }
    }
  }

  private void stages(String what) throws Exception {
    for (dev.gantrywright.ui.state.Stage each : dev.gantrywright.ui.state.Stage.values()) {
      run(() -> desk().stage().set(each));
      pause(400);
      shot(what + "-" + each.name().toLowerCase(Locale.ROOT));
    }
  }

  PrinterDesk desk() {
    return window.printer().orElseThrow();
  }

  void open(boolean demo) throws Exception {
    data = Files.createTempDirectory("states");
    System.setProperty("user.home", data.toString());
    Path workshop = data.resolve("printers");
    if (demo) {
      DemoWorkshop.unpack(workshop);
    }
    run(
        () -> {
          stage = new Stage();
          window = new WorkbenchWindow(stage, Surroundings.in(data, workshop));
          stage.setWidth(width);
          stage.setHeight(height);
          window.show();
          window.retheme(mode);
          window.rezoom(zoom);
        });
    pause(800);
  }

  void openPrinter(Path file) throws Exception {
    run(() -> window.open(file));
    until(() -> window.printer().map(d -> d.judged().get().revision() >= 0).orElse(false));
    pause(300);
  }

  void close() throws Exception {
    run(
        () -> {
          window.close();
          stage.hide();
        });
  }

  void press(String id) {
    ((Button) window.scene().lookup(id)).fire();
  }

  void shot(String name) throws Exception {
    pause(400);
    shotNow(name);
  }

  void shotNow(String name) throws Exception {
    run(() -> Pictures.save(folder.resolve(name + ".png"), window.scene()));
    System.out.println(name);
  }

  static void pause(int millis) throws InterruptedException {
    Thread.sleep(millis);
  }

  static void run(Runnable act) throws Exception {
    CompletableFuture<Void> done = new CompletableFuture<>();
    Platform.runLater(
        () -> {
          try {
            act.run();
            done.complete(null);
          } catch (RuntimeException failed) {
            done.completeExceptionally(failed);
          }
        });
    done.get();
  }

  static void until(BooleanSupplier reached) throws Exception {
    for (int i = 0; i < 1500; i++) {
      CompletableFuture<Boolean> asked = new CompletableFuture<>();
      Platform.runLater(() -> asked.complete(reached.getAsBoolean()));
      if (asked.get()) {
        return;
      }
      Thread.sleep(20);
    }
    throw new IOException("waited too long");
  }
}
