package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.PrinterDesk;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The serial log, with a board that says what the test wants. */
class LogUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;
  private ServerSocket server;
  private Socket board;
  private int said;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
    PortAddress address = new PortAddress.Tcp("127.0.0.1", server.getLocalPort());
    open.run(() -> desk.link().connect(desk.profile(), address, 1));
    board = server.accept();
    open.press(KeyCode.CONTROL, KeyCode.J);
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
      board.close();
      server.close();
    }
  }

  /** The board says so many lines more. */
  private void say(int lines) throws Exception {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < lines; i++) {
      text.append("echo: feather ").append(said++).append('\n');
    }
    OutputStream out = board.getOutputStream();
    out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
    out.flush();
  }

  @SuppressWarnings("unchecked")
  private ListView<String> log() {
    return (ListView<String>) open.window().scene().lookup("#line-log");
  }

  private boolean shows(String line) {
    return log().getItems().stream().anyMatch(row -> row.endsWith(line));
  }

  private String note() {
    return ((Labeled) open.window().scene().lookup("#line-note")).getText();
  }

  @Test
  void itFollowsTheLineUntilSomebodyScrollsBackToRead() throws Exception {
    say(3_000);
    open.until(() -> shows("feather 2999"));
    assertThat(open.on(() -> log().getItems().size())).isEqualTo(2_000);
    open.run(() -> log().requestFocus());
    open.press(KeyCode.CONTROL, KeyCode.HOME);
    open.press(KeyCode.HOME);
    List<String> before = open.on(() -> List.copyOf(log().getItems()));
    say(100);
    open.until(() -> note().contains("below"));
    assertThat(open.on(() -> List.copyOf(log().getItems()))).isEqualTo(before);
    open.press(KeyCode.END);
    open.until(() -> shows("feather 3099") && note().isEmpty());
  }

  @Test
  void aSearchFindsWhatIsNoLongerShown() throws Exception {
    say(3_000);
    open.until(() -> shows("feather 2999"));
    assertThat(open.on(() -> shows("feather 17"))).isFalse();
    open.type("#line-search", "FEATHER 17");
    open.until(() -> shows("feather 17") && shows("feather 1799"));
    assertThat(open.on(() -> log().getItems())).hasSize(1 + 10 + 100);
    say(1);
    open.type("#line-search", "feather 3000");
    open.until(() -> shows("feather 3000") && log().getItems().size() == 1);
  }

  @Test
  void itIsKeptWholeBesideTheProfileEvenAfterTheLineIsGivenUp() throws Exception {
    say(3_000);
    open.until(() -> shows("feather 2999"));
    open.run(() -> desk.link().disconnect());
    open.click("#line-save");
    Path kept = open.workshop().resolve("heron.line.log");
    open.until(() -> note().contains("heron.line.log"));
    List<String> rows = Files.readAllLines(kept);
    for (int i : new int[] {0, 1, 1_500, 2_999}) {
      assertThat(rows).anyMatch(row -> row.endsWith("< echo: feather " + said(i)));
    }
    assertThat(rows.stream().filter(row -> row.contains("feather"))).hasSize(3_000);
    open.click("#line-save");
    open.until(() -> note().contains("heron.line-2.log"));
  }

  private static String said(int number) {
    return number + "\\n";
  }
}
