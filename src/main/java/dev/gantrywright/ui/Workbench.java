package dev.gantrywright.ui;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.ui.theme.Typefaces;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.application.Application;
import javafx.stage.Stage;

/** The window as a program: opens a printer, or the start page with the demo workshop. */
public final class Workbench extends Application {
  private WorkbenchWindow window;

  @Override
  public void start(Stage stage) {
    Typefaces.load();
    Surroundings around = Surroundings.ofThisUser();
    window = new WorkbenchWindow(stage, around);
    window.show();
    Optional<Path> asked = getParameters().getRaw().stream().findFirst().map(Path::of);
    around
        .background()
        .execute(
            () -> {
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

  @Override
  public void stop() {
    window.close();
  }
}
