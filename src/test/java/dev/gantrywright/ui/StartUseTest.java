package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterCard;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The printers of a workshop: their state, search, duplicate, compare; files dragged in. */
class StartUseTest {
  @TempDir Path data;
  private OpenWindow open;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    listed(3);
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private void listed(int count) throws Exception {
    open.until(() -> open.window().workshop().printers().get().size() == count);
    open.until(() -> all(".printer-row").size() == count);
  }

  private Set<Node> all(String selector) {
    return open.window().scene().getRoot().lookupAll(selector);
  }

  private List<String> words() throws Exception {
    return open.on(
        () ->
            all(".label").stream()
                .filter(node -> node instanceof Label)
                .map(node -> ((Label) node).getText())
                .toList());
  }

  @Test
  void everyPrinterShowsItsFindingsItsLastBuildAndItsLastProof() throws Exception {
    assertThat(words())
        .contains("Heron", "Sandpiper", "Guillemot", "everything fits", "6 errors")
        .contains("never built", "never proven");
  }

  @Test
  void aProofIsRememberedOnTheStartPage() throws Exception {
    var desk = open.heron();
    open.run(
        () ->
            desk.link()
                .connect(desk.profile(), new dev.gantrywright.link.PortAddress.Practice(""), 20));
    open.until(() -> desk.link().live().get().fresh());
    open.run(() -> desk.link().prove(desk.profile()));
    open.until(() -> desk.link().proof().get().isPresent());
    // Told by the file itself: keeping it is background work.
    open.until(() -> proofIsKept());
    // Once: each time it is shown the page begins to read anew.
    open.run(() -> open.window().showStart());
    open.until(() -> heronIsRemembered());
    assertThat(words()).anyMatch(words -> words.startsWith("proof failed"));
  }

  private Path history() {
    return open.workshop().resolve("heron.history.jsonl");
  }

  /** The file's last line is whole. */
  private boolean proofIsKept() {
    try {
      return Files.exists(history()) && Files.readString(history()).endsWith("\n");
    } catch (java.io.IOException beingWritten) {
      return false;
    }
  }

  private boolean heronIsRemembered() {
    return all(".printer-row .label").stream()
        .anyMatch(node -> ((Label) node).getText().startsWith("proof failed"));
  }

  @Test
  void searchKeepsWhatMatches() throws Exception {
    open.type("#start-search", "petrel");
    open.until(() -> all(".printer-row").size() == 1);
    assertThat(words()).contains("Guillemot").doesNotContain("Heron");
    open.type("#start-search", "nothing like it");
    open.until(() -> all(".printer-row").isEmpty());
    assertThat(words()).anyMatch(words -> words.startsWith("No printer matches"));
  }

  @Test
  void aDuplicateStandsBesideItsOriginal() throws Exception {
    open.run(() -> ((Button) all("#copy").iterator().next()).fire());
    listed(4);
    assertThat(words()).contains("Guillemot copy");
    assertThat(open.workshop().resolve("guillemot-copy.printer.json")).exists();
  }

  @Test
  void twoPrintersStandSideBySide() throws Exception {
    assertThat(open.find("#start-compare").orElseThrow().isDisabled()).isTrue();
    open.run(
        () ->
            all(".printer-row").stream()
                .limit(2)
                .forEach(row -> ((CheckBox) row.lookup(".check-box")).fire()));
    open.run(() -> ((Button) open.window().scene().lookup("#start-compare")).fire());
    open.until(() -> !all(".comparison").isEmpty());
    assertThat(words()).anyMatch(words -> words.matches(".* and .*: \\d+ values differ"));
  }

  @Test
  void aProfileDraggedInOpens() throws Exception {
    Path copy = data.resolve("mine.printer.json");
    Files.copy(open.workshop().resolve("guillemot.printer.json"), copy);
    open.run(() -> new WindowActs(open.window()).dropped(copy));
    open.until(() -> open.window().printer().isPresent());
    assertThat(open.window().printer().orElseThrow().opened().get().file().getFileName())
        .hasToString("mine.printer.json");
  }

  @Test
  void aFirmwareFolderDraggedInGetsAProfileOfItsOwn() throws Exception {
    Path folder = open.workshop().resolve("rookery-2.3");
    open.run(() -> new WindowActs(open.window()).dropped(folder));
    open.until(() -> open.window().printer().isPresent());
    var desk = open.window().printer().orElseThrow();
    assertThat(desk.opened().get().folder()).isNotNull();
    assertThat(desk.profile().serial().baud()).isEqualTo(115_200);
    assertThat(Files.list(folder).filter(file -> file.toString().endsWith(".json"))).isEmpty();
  }

  @Test
  void whatIsNoProfileIsSaidInOneLine() throws Exception {
    Path wrong = Files.writeString(data.resolve("wrong.printer.json"), "{\"format\": ");
    open.run(() -> new WindowActs(open.window()).dropped(wrong));
    open.until(() -> !open.window().workshop().trouble().get().isEmpty());
    assertThat(open.window().printer()).isEmpty();
    assertThat(words()).anyMatch(words -> words.contains("wrong.printer.json"));
  }

  @Test
  void whatWasOpenedLastIsListedFirstInTheNextRun() throws Exception {
    Path elsewhere = data.resolve("elsewhere.printer.json");
    Files.copy(open.workshop().resolve("heron.printer.json"), elsewhere);
    open.run(() -> open.window().open(elsewhere));
    open.until(() -> open.window().printer().isPresent());
    open.close();
    open = new OpenWindow(data);
    listed(4);
    PrinterCard first = open.window().workshop().printers().get().get(0);
    assertThat(first.file().getFileName()).hasToString("elsewhere.printer.json");
  }
}
