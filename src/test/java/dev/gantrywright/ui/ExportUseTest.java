package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.ui.state.DiffRow;
import dev.gantrywright.ui.state.FoundSetting;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** See the lines that would change and write the patched folder. */
class ExportUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.click("#stage-write");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private static Map<String, String> files(Path folder) throws Exception {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            folder.relativize(file).toString(),
            new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1));
      }
    }
    return files;
  }

  @Test
  void thePatchedFolderHoldsThePlannedLinesAndTheSourceIsAsItWas() throws Exception {
    Path source = open.workshop().resolve("rookery-2.3");
    Map<String, String> before = files(source);
    Path target = data.resolve("patched");
    open.type("#export-target", target.toString());
    open.click("#export");
    open.until(() -> Files.isDirectory(target));
    open.until(() -> open.window().scene().lookup("#export-open") != null);
    open.click("#export-open");
    open.until(() -> open.shownFolders().equals(List.of(target)));
    assertThat(files(source)).isEqualTo(before);
    Map<String, String> after = files(target);
    long changed =
        before.entrySet().stream()
            .filter(file -> !file.getValue().equals(after.get(file.getKey())))
            .count();
    var plan = desk.planned().get().plan().orElseThrow();
    assertThat(changed)
        .isEqualTo(plan.lines().stream().map(line -> line.file()).distinct().count());
    List<String> names =
        FirmwareFolder.read(target).settings().stream().map(Setting::name).toList();
    assertThat(names).isNotEmpty();
    var again =
        dev.gantrywright.patch.PatchPlan.of(
            desk.profile(), desk.opened().get().names(), FirmwareFolder.read(target));
    assertThat(again.lines()).as("nothing is left to write").isEmpty();
  }

  @Test
  void aFolderThatHoldsSomethingIsNotWrittenOverUnasked() throws Exception {
    Path target = Files.createDirectory(data.resolve("full"));
    Files.writeString(target.resolve("mine.txt"), "mine");
    open.type("#export-target", target.toString());
    open.click("#export");
    open.until(() -> open.window().scene().lookup("#export-replace") != null);
    assertThat(target.resolve("mine.txt")).hasContent("mine");
  }

  @Test
  void aLineLeadsToItsFieldAndAFieldToItsLine() throws Exception {
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(
        () -> {
          ListView<?> list = (ListView<?>) open.window().scene().lookup("#diff");
          return list != null && list.getSelectionModel().getSelectedItem() != null;
        });
    open.press(KeyCode.ENTER);
    open.until(() -> desk.part().get().equals("serial"));
  }

  @Test
  void atTwiceTheSizeEachChangedLineHasItsCauseBelowIt() throws Exception {
    open.run(() -> open.window().rezoom(2));
    open.until(() -> rows().stream().anyMatch(row -> row.kind() == DiffRow.Kind.REASON));
    List<DiffRow> rows = open.on(this::rows);
    int changed = 0;
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).kind() == DiffRow.Kind.CHANGED) {
        changed++;
        assertThat(rows.get(i + 1).kind()).isEqualTo(DiffRow.Kind.REASON);
        assertThat(rows.get(i + 1).cause()).isEqualTo(rows.get(i).cause()).isNotBlank();
        assertThat(rows.get(i + 1).path()).isEqualTo(rows.get(i).path());
      }
    }
    assertThat(changed).isEqualTo(desk.planned().get().plan().orElseThrow().lines().size());
    open.run(() -> desk.goToLine("serial.baud"));
    open.until(() -> diff().getSelectionModel().getSelectedItem() != null);
    DiffRow line = open.on(() -> (DiffRow) diff().getSelectionModel().getSelectedItem());
    assertThat(line.kind()).isEqualTo(DiffRow.Kind.CHANGED);
    open.until(() -> words().contains(line.cause()));
    open.press(KeyCode.DOWN);
    open.press(KeyCode.ENTER);
    open.until(() -> desk.part().get().equals("serial"));
    open.run(() -> open.window().rezoom(1));
    open.run(() -> desk.stage().set(Stage.WRITE));
    open.until(() -> rows().stream().noneMatch(row -> row.kind() == DiffRow.Kind.REASON));
  }

  private ListView<?> diff() {
    return (ListView<?>) open.window().scene().lookup("#diff");
  }

  private List<DiffRow> rows() {
    return diff() == null
        ? List.of()
        : diff().getItems().stream().map(DiffRow.class::cast).toList();
  }

  /** What is drawn whole in the list. */
  private List<String> words() {
    return diff().lookupAll(".text").stream().map(node -> ((Text) node).getText()).toList();
  }

  @Test
  void allSettingsCanBeSearched() throws Exception {
    open.click("#write-settings");
    open.type("#settings-search", "line_rate live");
    open.until(() -> settings().size() == 1);
    assertThat(settings().get(0).name()).isEqualTo("LINE_RATE");
    open.type("#settings-search", "no such setting");
    open.until(() -> settings().isEmpty());
  }

  @SuppressWarnings("unchecked")
  private List<Setting> settings() {
    return ((ListView<FoundSetting>) open.window().scene().lookup("#settings"))
        .getItems().stream().map(FoundSetting::setting).toList();
  }
}
