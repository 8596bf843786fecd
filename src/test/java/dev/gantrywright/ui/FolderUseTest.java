package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.shell.FolderStrip;
import dev.gantrywright.ui.state.FolderDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another firmware folder is named in Describe: the window reads it, and says where it is not. */
class FolderUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    copy(open.workshop().resolve("rookery-2.3"), open.workshop().resolve("rookery-2.4"));
    desk = open.heron();
    open.click("#part-build");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private static void copy(Path from, Path to) throws Exception {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path each : all.toList()) {
        Files.copy(each, to.resolve(from.relativize(each).toString()));
      }
    }
  }

  private boolean reads(String folder) {
    var now = desk.opened().get().folder();
    return now != null
        && now.root().getFileName().toString().equals(folder)
        && desk.folder().state().get().current()
        && desk.planned().get().revision() == desk.values().revision();
  }

  @Test
  void theFolderThatIsTypedIsReadAndUndoBringsTheFormerBack() throws Exception {
    int lines = desk.planned().get().plan().orElseThrow().lines().size();
    open.type("#edit-build-folder", "rookery-2.4");
    open.until(() -> reads("rookery-2.4"));
    assertThat(desk.planned().get().plan().orElseThrow().lines()).hasSize(lines);
    open.run(() -> desk.stage().set(Stage.WRITE));
    open.until(() -> target().contains("rookery-2.4-heron"));
    open.press(KeyCode.CONTROL, KeyCode.Z);
    open.until(() -> reads("rookery-2.3"));
    open.until(() -> target().contains("rookery-2.3-heron"));
  }

  private String target() {
    return ((javafx.scene.control.TextField) open.window().scene().lookup("#export-target"))
        .getText();
  }

  /** A folder that never ends: cancelled, the window says of which folder it speaks. */
  @Test
  void aLongReadingIsShownAndCanBeCancelled() throws Exception {
    Deque<Runnable> never = new ArrayDeque<>();
    FolderDesk slow =
        open.on(
            () ->
                new FolderDesk(
                    desk,
                    (file, profile, progress) -> desk.printer(),
                    Runnable::run,
                    never::add,
                    Runnable::run));
    FolderStrip strip = open.on(() -> new FolderStrip(slow));
    try {
      assertThat(strip.isVisible()).isFalse();
      open.run(() -> desk.values().edit("build.folder", "rookery-2.4"));
      open.until(strip::isVisible);
      assertThat(words(strip))
          .contains("Reading the firmware folder rookery-2.4.")
          .contains("speaks of rookery-2.3");
      open.run(() -> ((Button) strip.lookup("#folder-cancel")).fire());
      open.until(() -> words(strip).contains("rookery-2.4 was not read"));
      assertThat(strip.lookup("#folder-cancel").isVisible()).isFalse();
      open.run(() -> ((Button) strip.lookup("#folder-again")).fire());
      open.until(() -> strip.lookup("#folder-cancel").isVisible());
      open.run(() -> desk.values().undo());
      open.until(() -> !strip.isVisible());
    } finally {
      open.run(strip::close);
      open.run(slow::close);
    }
  }

  private static String words(FolderStrip strip) {
    return strip.getChildren().stream()
        .filter(Label.class::isInstance)
        .map(node -> ((Label) node).getText())
        .findFirst()
        .orElseThrow();
  }

  @Test
  void aFolderThatIsNotThereIsAFindingAtItsField() throws Exception {
    open.type("#edit-build-folder", "no-such-folder");
    open.until(
        () ->
            desk.opened().get().folder() == null
                && desk.notes().stream()
                    .anyMatch(
                        note ->
                            note.id().equals("GW-F022")
                                && note.path().equals("build.folder")
                                && note.text().contains("there is no such folder")));
    assertThat(desk.planned().get().plan()).isEmpty();
    open.press(KeyCode.CONTROL, KeyCode.Z);
    open.until(() -> reads("rookery-2.3"));
    open.until(() -> desk.notes().stream().noneMatch(note -> note.id().equals("GW-F022")));
  }
}
