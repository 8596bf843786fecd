package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import dev.gantrywright.image.CortexProgram;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Put an image onto the board from the window: judged, copied, read back, or by a command. */
class LoadUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;
  private Path right;
  private Path wrong;
  private Path card;

  @BeforeEach
  void open() throws Exception {
    right = Files.write(data.resolve("right.bin"), CortexProgram.f405(0x8000).raw());
    wrong = Files.write(data.resolve("wrong.bin"), CortexProgram.f405(0).raw());
    card = Files.createDirectory(data.resolve("card"));
    open = new OpenWindow(data);
    desk = open.heron();
    // Heron is planted with mistakes; its board is the one that the images are made for.
    open.run(() -> desk.values().edit("board.mcu", "STM32F405RG"));
    open.run(() -> desk.values().edit("board.sheet", "fulmar-m4.board.json"));
    open.settle();
    open.click("#stage-load");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private Set<String> words() {
    return open.window().scene().getRoot().lookupAll(".label").stream()
        .filter(Node::isVisible)
        .map(node -> ((Labeled) node).getText())
        .collect(Collectors.toSet());
  }

  private boolean says(String part) {
    return words().stream().anyMatch(text -> text != null && text.contains(part));
  }

  private void choose(Path image) throws Exception {
    open.type("#load-image", image.toString());
    open.press(javafx.scene.input.KeyCode.ENTER);
  }

  @Test
  void aRightImageIsCopiedReadBackAndKnownAgainWhenTheCardReturns() throws Exception {
    choose(right);
    open.until(() -> says("nothing speaks against it"));
    open.type("#load-card", card.toString());
    open.click("#load-copy");
    open.until(() -> says("read back and found the same"));
    assertThat(card.resolve("FULMAR.IMG")).hasSameBinaryContentAs(right);
    open.click("#load-back");
    open.until(() -> says("FULMAR.IMG is still there"));
    Files.move(card.resolve("FULMAR.IMG"), card.resolve("FULMAR.OLD"));
    open.click("#load-back");
    open.until(() -> says("Go on to Prove."));
  }

  @Test
  void aWrongImageIsRefusedUntilAReasonIsGivenAndTheOneBeforeIsKept() throws Exception {
    Files.copy(right, card.resolve("FULMAR.IMG"));
    choose(wrong);
    open.until(() -> says("must not be loaded"));
    open.type("#load-card", card.toString());
    open.click("#load-copy");
    open.until(() -> says("Not loaded:"));
    assertThat(card.resolve("FULMAR.IMG")).hasSameBinaryContentAs(right);
    open.type("#load-reason", "a test without the loader");
    open.click("#load-copy");
    open.until(() -> says("read back and found the same"));
    assertThat(card.resolve("FULMAR.IMG")).hasSameBinaryContentAs(wrong);
    open.until(() -> open.window().scene().lookup("#load-kept") != null);
    open.click("#load-kept");
    open.until(() -> says("nothing speaks against it"));
  }

  @Test
  void aBoardThatShowsItselfAsADriveIsNotGivenAnImageOfAnotherForm() throws Exception {
    Files.writeString(card.resolve("INFO_UF2.TXT"), "UF2 loader\nModel: Fulmar\nBoard-ID: F4-1\n");
    choose(wrong);
    open.until(() -> says("must not be loaded"));
    open.type("#load-card", card.toString());
    open.click("#load-copy");
    open.until(() -> says("Not loaded:"));
    assertThat(card.resolve("FULMAR.IMG")).doesNotExist();
  }

  @Test
  void aCommandOfOnesOwnRunsIsKeptInTheProfileAndAnEraseAsksForItsSentence() throws Exception {
    Tool.need("cp", "echo");
    choose(right);
    Path taken = data.resolve("taken.bin");
    open.type("#load-command", "cp {file} " + taken);
    open.click("#load-run");
    open.until(() -> says("the command ended well"));
    assertThat(taken).hasSameBinaryContentAs(right);
    assertThat(desk.profile().build().flash()).isEqualTo(List.of("cp", "{file}", taken.toString()));
    open.type("#load-command", "echo --mass-erase {file}");
    open.until(() -> says("erases the whole chip"));
    open.click("#load-run");
    open.until(() -> says("Not loaded:"));
    open.type("#load-confirm", "erase everything on Fulmar M4");
    open.click("#load-run");
    open.until(() -> says("the command ended well"));
  }
}
