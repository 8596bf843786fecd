package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.shell.FolderStrip;
import dev.gantrywright.ui.state.FolderDesk;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.ProfileText;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
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
          .contains("still those of rookery-2.3");
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

  /** One line of the former folder is faulty; the other folder is as good as the first was. */
  private void faulty(String folder) throws Exception {
    Path header = open.workshop().resolve(folder).resolve("config").resolve("nest.h");
    Files.writeString(header, "#if (\n#endif\n", StandardOpenOption.APPEND);
  }

  private List<MarginNote> ofTheFolder() {
    return desk.notes().stream().filter(note -> note.id().equals("GW-F015")).toList();
  }

  private static String station(OpenWindow open, String stage) throws Exception {
    return open.on(() -> open.window().scene().lookup("#stage-" + stage).getAccessibleText());
  }

  @Test
  void whileAFolderIsReadCheckSaysSoAndKeepsTheFormersFindingsToItself() throws Exception {
    open.close();
    CountDownLatch held = new CountDownLatch(1);
    open =
        new OpenWindow(
            data.resolve("held"),
            usual ->
                (file, profile, progress) -> {
                  hold(held);
                  return usual.open(file, profile, progress);
                });
    try {
      copy(open.workshop().resolve("rookery-2.3"), open.workshop().resolve("rookery-2.4"));
      faulty("rookery-2.3");
      desk = open.heron();
      assertThat(ofTheFolder()).as("of the former folder").isNotEmpty();
      int others = desk.notes().size() - ofTheFolder().size();
      open.run(() -> desk.stage().set(Stage.CHECK));
      open.run(() -> desk.values().edit("build.folder", "rookery-2.4"));
      open.until(() -> desk.judged().get().revision() == desk.values().revision());
      assertThat(desk.folder().state().get().reads()).isTrue();
      assertThat(ofTheFolder()).isEmpty();
      assertThat(desk.notes()).as("what needs no folder").hasSize(others).isNotEmpty();
      assertThat(station(open, "check")).isEqualTo("Check, reading the folder");
      assertThat(station(open, "write")).isEqualTo("Write, reading the folder");
      assertThat(labels()).anyMatch(text -> text.endsWith("so far, the folder is being read"));
      assertThat(ProfileText.of(desk)).contains("The firmware folder is being read");
      open.run(() -> desk.stage().set(Stage.WRITE));
      open.until(() -> labels().contains("these lines are of the former folder"));
      held.countDown();
      open.until(() -> reads("rookery-2.4") && desk.judged().get().whole());
      assertThat(ofTheFolder()).isEmpty();
      assertThat(desk.notes()).hasSize(others);
      assertThat(station(open, "check")).contains("error");
      assertThat(ProfileText.of(desk)).doesNotContain("The firmware folder is being read");
    } finally {
      held.countDown();
    }
  }

  @Test
  void aReadingThatIsCancelledIsAFindingAtItsFieldUntilItIsReadAgain() throws Exception {
    open.close();
    CountDownLatch held = new CountDownLatch(1);
    open =
        new OpenWindow(
            data.resolve("held"),
            usual ->
                (file, profile, progress) -> {
                  hold(held);
                  return usual.open(file, profile, progress);
                });
    try {
      copy(open.workshop().resolve("rookery-2.3"), open.workshop().resolve("rookery-2.4"));
      desk = open.heron();
      open.run(() -> desk.values().edit("build.folder", "rookery-2.4"));
      open.until(() -> node("#folder-cancel").isVisible() && node("#folder-strip").isVisible());
      open.run(() -> ((Button) node("#folder-cancel")).fire());
      open.until(() -> desk.notes().stream().anyMatch(FolderUseTest::unread));
      assertThat(station(open, "write")).isEqualTo("Write, folder not read");
      held.countDown();
      open.run(() -> ((Button) node("#folder-again")).fire());
      open.until(() -> reads("rookery-2.4") && desk.judged().get().whole());
      assertThat(desk.notes()).noneMatch(FolderUseTest::unread);
    } finally {
      held.countDown();
    }
  }

  private javafx.scene.Node node(String id) {
    return open.window().scene().lookup(id);
  }

  private static boolean unread(MarginNote note) {
    return note.id().equals("GW-F022") && note.text().contains("its reading was cancelled");
  }

  private List<String> labels() {
    return open.window().scene().getRoot().lookupAll(".label").stream()
        .map(label -> ((Label) label).getText())
        .toList();
  }

  private static void hold(CountDownLatch held) {
    try {
      held.await();
    } catch (InterruptedException ended) {
      throw new CancellationException();
    }
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
