package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where something is missing or lost, the window says what to do next. */
class StatesUseTest {
  @TempDir Path data;
  private OpenWindow open;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
  }

  @AfterEach
  void close() throws Exception {
    open.close();
  }

  private Node node(String id) {
    return open.window().scene().lookup(id);
  }

  @Test
  void aFolderThatIsGoneIsNamedWithTheWayToMendIt() throws Exception {
    Files.move(open.workshop().resolve("rookery-2.3"), data.resolve("elsewhere"));
    open.run(() -> open.window().open(open.workshop().resolve("heron.printer.json")));
    open.until(() -> open.window().printer().isPresent());
    PrinterDesk desk = open.window().printer().orElseThrow();
    open.run(() -> desk.stage().set(Stage.WRITE));
    open.until(() -> node("#write-to-build") != null && node("#write-to-build").isVisible());
    assertThat(open.window().scene().getRoot().lookupAll(".label"))
        .anyMatch(
            label -> ((Label) label).getText().contains("rookery-2.3 that the profile names"));
    open.run(() -> ((Button) node("#write-to-build")).fire());
    assertThat(desk.part().get()).isEqualTo("build");
    open.run(() -> desk.stage().set(Stage.BUILD));
    open.until(() -> node("#build-start") != null);
    assertThat(node("#build-start").isDisabled()).isTrue();
  }

  @Test
  void aLineThatCannotBeOpenedIsTriedAgainWithOneClick() throws Exception {
    PrinterDesk desk = open.heron();
    int port;
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = free.getLocalPort();
    }
    open.run(() -> desk.stage().set(Stage.PROVE));
    open.run(() -> desk.link().connect(desk.profile(), new PortAddress.Tcp("127.0.0.1", port), 20));
    open.until(() -> desk.link().status().get().kind() == LinkStatus.Kind.LOST);
    open.until(() -> node("#connect-again") != null && node("#connect-again").isVisible());
    try (ServerSocket server = new ServerSocket(port, 1, InetAddress.getLoopbackAddress())) {
      open.run(() -> ((Button) node("#connect-again")).fire());
      server.setSoTimeout(60_000);
      try (Socket board = server.accept()) {
        open.until(() -> desk.link().session().isPresent());
        assertThat(board.isConnected()).isTrue();
      }
    }
  }

  @Test
  void noPartIsInHandOnAnotherStage() throws Exception {
    PrinterDesk desk = open.heron();
    open.run(() -> desk.part().set("names"));
    open.until(() -> ((ToggleButton) node("#part-names")).isSelected());
    open.run(() -> desk.stage().set(Stage.CHECK));
    open.until(() -> !((ToggleButton) node("#part-names")).isSelected());
    open.run(() -> ((ToggleButton) node("#part-axes-x")).fire());
    assertThat(desk.stage().get()).isEqualTo(Stage.DESCRIBE);
    assertThat(desk.part().get()).isEqualTo("axes.x");
  }

  @Test
  void aHeaterShowsWhatFlowsInItsCircuit() throws Exception {
    PrinterDesk desk = open.heron();
    open.run(() -> desk.part().set("heaters.bed"));
    open.until(() -> circuit().contains("8.33 A; 200 W; BED: 69.4\u00a0% of 12 A"));
    open.run(() -> desk.values().edit("heaters.bed.watts", 400.0));
    open.until(() -> circuit().contains("BED: 139\u00a0% of 12 A, too much"));
  }

  private String circuit() {
    return open.window().scene().getRoot().lookupAll("*").stream()
        .map(Node::getAccessibleText)
        .filter(words -> words != null && words.startsWith("Circuit of the heater"))
        .findFirst()
        .orElse("");
  }
}
