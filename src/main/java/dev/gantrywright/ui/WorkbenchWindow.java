package dev.gantrywright.ui;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.ui.shell.KeyMap;
import dev.gantrywright.ui.shell.Palette;
import dev.gantrywright.ui.shell.RulePage;
import dev.gantrywright.ui.shell.ZoomPane;
import dev.gantrywright.ui.start.StartView;
import dev.gantrywright.ui.state.Habits;
import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.Workshop;
import dev.gantrywright.ui.theme.Mode;
import dev.gantrywright.ui.theme.Theme;
import dev.gantrywright.ui.theme.Tones;
import dev.gantrywright.ui.theme.Typefaces;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Scene;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window: start page or one open printer, with palette and key map floating above. */
public final class WorkbenchWindow {
  private static final double HERTZ = 20;

  /** Of the window's upper edge so much must be on a screen to take hold of it, pixels. */
  private static final double GRIP = 40;

  private static final double LEAST_WIDTH = 640;
  private static final double LEAST_HEIGHT = 400;

  private final Stage stage;
  private final Surroundings around;
  private final Workshop workshop;
  private final StackPane content = new StackPane();
  private final ZoomPane zoom;
  private final Palette palette = new Palette();
  private final KeyMap keys = new KeyMap();
  private final RulePage page = new RulePage();
  private final Scene scene;
  private final WindowActs acts;
  private Habits habits;
  private Consumer<PrinterDesk> whenOpened = desk -> {};
  private Optional<DeskView> desk = Optional.empty();
  private StartView start;
  private Thread saving;

  public WorkbenchWindow(Stage stage, Surroundings around) {
    this.stage = stage;
    this.around = around;
    this.workshop =
        new Workshop(around.inspector(), this::learn, around.background(), around.view());
    CompletableFuture<Void> typefaces = Typefaces.first(around.background());
    this.habits = around.habits().read();
    // Controls ask for their looks when they are made, and a scene looks again at all it holds with
    // every sheet: looks first, then what is to be seen, then the scene.
    Theme.controls(habits.mode());
    zoom = new ZoomPane(layers());
    zoom.zoom(habits.zoom());
    acts = new WindowActs(this);
    workshop.busy().set(true);
    showStart();
    scene = new Scene(new StackPane(), habits.width(), habits.height());
    acts.install(scene);
    drops();
    Theme.apply(scene, habits.mode());
    typefaces.join();
    scene.setRoot(zoom);
    stage.setScene(scene);
    stage.setTitle("Gantrywright");
    stage.setMinWidth(LEAST_WIDTH);
    stage.setMinHeight(LEAST_HEIGHT);
    if (onScreen(habits)) {
      stage.setX(habits.x());
      stage.setY(habits.y());
    }
    stage.setMaximized(habits.maximised());
    // Reading and checking every printer would keep the first frame waiting.
    afterFirstFrame(this::look);
  }

  private StackPane layers() {
    StackPane layers = new StackPane(content, palette, keys, page);
    StackPane.setAlignment(palette, Pos.TOP_CENTER);
    StackPane.setMargin(palette, new Insets(72, 0, 0, 0));
    layers.getStyleClass().add("bench");
    return layers;
  }

  /** Whether the window would be seen where it stood: its screen may be gone since. */
  private static boolean onScreen(Habits habits) {
    return !Double.isNaN(habits.x())
        && !Double.isNaN(habits.y())
        && !Screen.getScreensForRectangle(
                habits.x(), habits.y(), habits.width(), Math.min(habits.height(), GRIP))
            .isEmpty();
  }

  private NameMap learn(FirmwareFolder folder) {
    return around.learner().learn(folder);
  }

  public void show() {
    stage.show();
  }

  /** Runs something once the window has been laid out for the first time. */
  void afterFirstFrame(Runnable act) {
    scene.addPostLayoutPulseListener(
        new Runnable() {
          @Override
          public void run() {
            scene.removePostLayoutPulseListener(this);
            around.view().execute(act);
          }
        });
  }

  /**
   * Opens the first printer.
   *
   * @param connect whether the practice board is connected at once
   * @param trouble one line to show; empty where all is well
   */
  public void begin(Optional<Path> file, boolean connect, String trouble) {
    if (!trouble.isEmpty()) {
      workshop.trouble().set(trouble);
    }
    file.ifPresent(
        path ->
            open(
                path,
                opened -> {
                  if (connect) {
                    opened
                        .link()
                        .connect(
                            opened.profile(),
                            new PortAddress.Practice(""),
                            HERTZ,
                            opened.firmware());
                  }
                }));
  }

  /** Opens a profile's file. */
  public void open(Path file) {
    open(file, opened -> {});
  }

  private void open(Path file, Consumer<PrinterDesk> then) {
    workshop.open(
        file,
        printer ->
            around
                .background()
                .execute(
                    () -> {
                      Optional<PrinterProfile> kept = around.recovery().find(printer.file());
                      around
                          .view()
                          .execute(
                              () -> {
                                opened(printer, kept);
                                then.accept(desk.orElseThrow().desk());
                              });
                    }));
  }

  /** Tells of each printer that is opened from now on. */
  void whenOpened(Consumer<PrinterDesk> act) {
    whenOpened = act;
  }

  private void opened(OpenPrinter printer, Optional<PrinterProfile> kept) {
    closeDesk();
    keep(habits.opened(printer.file().toString()));
    PrinterDesk next =
        new PrinterDesk(
            printer,
            around.inspector(),
            around.clock(),
            around.reading(),
            around.background(),
            around.view());
    next.page()
        .listen(
            asked ->
                asked.ifPresent(
                    note -> {
                      next.page().set(Optional.empty());
                      page.open(note);
                    }));
    DeskView view = new DeskView(next, kept, around, acts, this::tones, around.folders());
    desk = Optional.of(view);
    whenOpened.accept(next);
    content.getChildren().setAll(view.view());
    stage.setTitle(Texts.of("window.title", printer.title()));
  }

  /** Shows every printer. */
  public void showStart() {
    closeDesk();
    if (start == null) {
      start = new StartView(workshop, startActs());
    }
    content.getChildren().setAll(start);
    stage.setTitle("Gantrywright");
    if (stage.isShowing()) {
      look();
    }
  }

  private void look() {
    workshop.look(habits.recent().stream().map(Path::of).toList(), List.of(around.workshop()));
  }

  private StartView.Acts startActs() {
    return new StartView.Acts() {
      @Override
      public void open(PrinterCard card) {
        WorkbenchWindow.this.open(card.file());
      }

      @Override
      public void duplicate(PrinterCard card) {
        workshop.duplicate(card, copy -> showStart());
      }

      @Override
      public void openProfile() {
        acts.chooseProfile();
      }

      @Override
      public void openFolder() {
        acts.chooseFolder();
      }
    };
  }

  private void drops() {
    scene.setOnDragOver(
        drag -> {
          if (drag.getDragboard().hasFiles()) {
            drag.acceptTransferModes(TransferMode.COPY);
          }
        });
    scene.setOnDragDropped(
        drop -> {
          if (drop.getDragboard().hasFiles()) {
            acts.dropped(drop.getDragboard().getFiles().get(0).toPath());
            drop.setDropCompleted(true);
          }
        });
  }

  private Tones tones() {
    return Tones.of(habits.mode());
  }

  void retheme(Mode mode) {
    keep(habits.with(mode));
    Theme.apply(scene, mode);
    desk.ifPresent(DeskView::retone);
  }

  void rezoom(double factor) {
    keep(habits.zoomed(factor));
    zoom.zoom(habits.zoom());
  }

  private void keep(Habits next) {
    habits = next;
    Habits saved = next;
    around.background().execute(() -> around.habits().save(saved));
  }

  Habits habits() {
    return habits;
  }

  Optional<DeskView> desk() {
    return desk;
  }

  Palette palette() {
    return palette;
  }

  RulePage page() {
    return page;
  }

  KeyMap keys() {
    return keys;
  }

  Workshop workshop() {
    return workshop;
  }

  Stage stage() {
    return stage;
  }

  /** The scene, for tests and pictures. */
  public Scene scene() {
    return scene;
  }

  /** The open printer's view model, for tests and pictures. */
  public Optional<PrinterDesk> printer() {
    return desk.map(DeskView::desk);
  }

  private void closeDesk() {
    desk.ifPresent(DeskView::close);
    desk = Optional.empty();
  }

  /** Gives the line up and remembers the window. */
  public void close() {
    Runnable keepLast = desk.<Runnable>map(view -> view.keeper()::keepLast).orElse(() -> {});
    closeDesk();
    Habits last =
        habits.placed(
            stage.getX(), stage.getY(), scene.getWidth(), scene.getHeight(), stage.isMaximized());
    // No daemon: the program ends when it is written, and the toolkit's thread waits for nothing.
    saving =
        new Thread(
            () -> {
              keepLast.run();
              around.habits().save(last);
            },
            "habits");
    saving.start();
    around.background().shutdown();
  }

  /** Waits until what {@link #close} remembers is on the disk; for tests. */
  void remembered() throws InterruptedException {
    if (saving != null) {
      saving.join();
    }
  }
}
