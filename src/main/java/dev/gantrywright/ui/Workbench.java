package dev.gantrywright.ui;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.ui.theme.Typefaces;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.IntStream;
import javafx.application.Application;
import javafx.scene.image.Image;
import javafx.stage.Stage;

/** The window as a program: opens a printer, or the start page with the demo workshop. */
public final class Workbench extends Application {
  private static Surroundings prepared;
  private WorkbenchWindow window;

  /** Begins to read, while the toolkit starts, what its thread will ask for. */
  static void prepare() {
    prepared = Surroundings.ofThisUser();
  }

  @Override
  public void start(Stage stage) {
    Surroundings around = prepared == null ? Surroundings.ofThisUser() : prepared;
    Optional<Path> asked = getParameters().getRaw().stream().findFirst().map(Path::of);
    window = open(stage, around);
    window.afterFirstFrame(() -> begin(window, around, asked));
    around.view().execute(() -> stage.getIcons().setAll(icons()));
  }

  /** Puts the window on the screen, with nothing in it that can wait for the next frame. */
  static WorkbenchWindow open(Stage stage, Surroundings around) {
    WorkbenchWindow window = new WorkbenchWindow(stage, around);
    Executor later = Tenure.later(around.background());
    window.whenOpened(desk -> Tenure.after(desk, later));
    window.show();
    return window;
  }

  /** Opens the first printer: the one asked for, else the demo with the practice board. */
  static void begin(WorkbenchWindow window, Surroundings around, Optional<Path> asked) {
    around
        .background()
        .execute(
            () -> {
              Typefaces.others();
              Optional<Path> first = asked;
              String trouble = "";
              try {
                Path demo = DemoWorkshop.unpack(around.workshop());
                first = asked.isPresent() ? asked : Optional.of(demo);
              } catch (IOException failed) {
                trouble = failed.getMessage();
              }
              Optional<Path> file = first;
              String line = trouble;
              around.view().execute(() -> window.begin(file, asked.isEmpty(), line));
            });
  }

  /** The program's icon in the sizes that systems ask for. */
  private static List<Image> icons() {
    return IntStream.of(16, 32, 64, 128, 256)
        .mapToObj(size -> Workbench.class.getResource("icon/icon-" + size + ".png"))
        .map(place -> new Image(place.toString(), true))
        .toList();
  }

  @Override
  public void stop() {
    window.close();
  }
}
