package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Learn the folder's names, settle what asks, pick another setting, undo, pick a board. */
class NamesUseTest {
  private static final String SPEED = "axes.x.maxSpeed";

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    forgetWhatTheOwnerSettled();
    desk = open.heron();
    open.click("#part-names");
    open.until(this::read);
  }

  /**
   * So that learning asks, as it does in a folder that nobody has settled and whose speeds do not
   * say what they are.
   */
  private void forgetWhatTheOwnerSettled() throws Exception {
    Path header = open.workshop().resolve("rookery-2.3/config/roost.h");
    String lines = Files.readString(header, StandardCharsets.ISO_8859_1);
    Files.writeString(
        header,
        lines.replace("STRIDE_TOP ", "STRIDE_ROW ").replace("// highest speed, mm/s", "// mm/s"),
        StandardCharsets.ISO_8859_1);
    Path map = open.workshop().resolve("rookery-2.3.names.json");
    String text = Files.readString(map);
    Files.writeString(
        map,
        text.replace("STRIDE_TOP", "STRIDE_ROW")
            .replaceAll(",\\s+\"(by|confirmed)\" : [\"a-z]+", ""));
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private boolean read() {
    Node learn = open.window().scene().lookup("#names-learn");
    return learn != null && !learn.isDisabled() && !list("#names-picks").getItems().isEmpty();
  }

  private ListView<?> list(String id) {
    return (ListView<?>) open.window().scene().lookup(id);
  }

  private Optional<NameEntry> entry(String path) {
    return desk.opened().get().names().entry(path);
  }

  private void learn() throws Exception {
    open.run(() -> ((Button) open.window().scene().lookup("#names-learn")).fire());
    open.until(() -> read() && entry(SPEED).map(one -> !one.sure()).orElse(false));
  }

  private void filter(String name) throws Exception {
    open.run(() -> ((ToggleButton) open.window().scene().lookup("#names-filter-" + name)).fire());
  }

  private NameMap saved() throws Exception {
    return NameMapJson.read(open.workshop().resolve("rookery-2.3.names.json"));
  }

  @Test
  void theFirstRowSaysWhereAndWhy() throws Exception {
    open.run(() -> list("#names-fields").getSelectionModel().selectFirst());
    String words =
        open.on(
            () -> {
              StringBuilder all = new StringBuilder();
              for (Node node : open.window().scene().getRoot().lookupAll(".detail .label")) {
                all.append(((Label) node).getText()).append('\n');
              }
              return all.toString();
            });
    assertThat(words).contains("NEST_TITLE", "config/nest.h:", "Why", "unnamed", "Heron");
  }

  @Test
  void keysSettleWhatAsksOneAfterAnother() throws Exception {
    learn();
    filter("asks");
    int asks = open.on(() -> list("#names-fields").getItems().size());
    assertThat(asks).isGreaterThan(1);
    open.run(
        () -> {
          list("#names-fields").requestFocus();
          list("#names-fields").getSelectionModel().clearAndSelect(0);
        });
    open.press(KeyCode.ENTER);
    open.until(() -> list("#names-fields").getItems().size() == asks - 1);
    open.press(KeyCode.DELETE);
    open.until(() -> list("#names-fields").getItems().size() == asks - 2);
    assertThat(open.on(() -> desk.opened().get().names().userChoices().values()))
        .anyMatch(NameEntry::confirmed)
        .anyMatch(one -> one.macro() == null);
    open.press(KeyCode.CONTROL, KeyCode.Z);
    open.until(() -> list("#names-fields").getItems().size() == asks - 1);
    open.until(() -> savedChoices() == 1);
  }

  private long savedChoices() {
    try {
      return saved().userChoices().size();
    } catch (Exception writing) {
      return -1;
    }
  }

  @Test
  void aPickedSettingIsSavedAndStaysThroughLearning() throws Exception {
    open.run(() -> desk.focus().set(Optional.empty()));
    open.type("#names-search", SPEED);
    open.until(() -> list("#names-fields").getItems().size() == 1);
    open.type("#names-pick", "seek_speed[0]");
    open.press(KeyCode.ENTER);
    open.until(() -> entry(SPEED).map(NameEntry::macro).filter("SEEK_SPEED"::equals).isPresent());
    assertThat(entry(SPEED).orElseThrow().byUser()).isTrue();
    assertThat(entry(SPEED).orElseThrow().element()).isZero();
    open.run(() -> ((Button) open.window().scene().lookup("#names-learn")).fire());
    open.until(() -> read() && entry("axes.y.maxSpeed").isPresent());
    assertThat(entry(SPEED).orElseThrow().macro()).isEqualTo("SEEK_SPEED");
    open.until(() -> savedChoices() == 1);
    open.click("#names-leave");
    open.until(() -> entry(SPEED).map(one -> !one.byUser()).orElse(true));
  }

  @Test
  void pickingABoardFillsTheProfileAsOneStep() throws Exception {
    open.run(() -> ((ToggleButton) open.window().scene().lookup("#names-show-boards")).fire());
    open.until(() -> list("#names-boards") != null && !list("#names-boards").getItems().isEmpty());
    open.run(() -> list("#names-boards").getSelectionModel().clearAndSelect(1));
    open.click("#names-board-use");
    assertThat(desk.profile().board().constant()).isEqualTo("PERCH_PETREL_81");
    assertThat(desk.profile().board().mcu()).isEqualTo("ATmega1281");
    assertThat(desk.profile().board().target()).isEqualTo("petrel81");
    open.run(() -> desk.values().undo());
    assertThat(desk.profile().board().constant()).isEqualTo("PERCH_FULMAR_M4");
  }

  @Test
  void aFolderWithoutAMapGetsOneBesideTheProfile() throws Exception {
    Path file = open.workshop().resolve("bare.printer.json");
    Files.writeString(
        file, "{\"format\": 1, \"name\": \"Bare\", \"build\": {\"folder\": \"rookery-2.3\"}}");
    open.run(() -> open.window().open(file));
    open.until(
        () ->
            open.window().printer().filter(one -> "Bare".equals(one.profile().name())).isPresent());
    PrinterDesk bare = open.window().printer().orElseThrow();
    open.click("#part-names");
    open.until(() -> bare.profile().build().names() != null);
    Path made = open.workshop().resolve(bare.profile().build().names());
    assertThat(made.getFileName().toString()).isEqualTo("rookery-2.3-2.names.json");
    assertThat(NameMapJson.read(made).entry("serial.baud")).isPresent();
  }
}
