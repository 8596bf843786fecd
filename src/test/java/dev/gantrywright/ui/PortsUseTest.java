package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.UsbIdentity;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.prove.PracticeMachine;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plug a board in, see its port appear, connect to it, find its baud rate. */
class PortsUseTest {
  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;

  @BeforeEach
  void open() throws Exception {
    open = new OpenWindow(data);
    desk = open.heron();
    open.click("#stage-prove");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private static PortDescription port(String name, String holder) {
    return new PortDescription(
        name,
        "a bridge",
        UsbIdentity.parse("usb:10c4:ea60:A9"),
        "UART bridge",
        Optional.ofNullable(holder),
        "");
  }

  private String text(String selector) {
    return ((Label) open.window().scene().lookup(selector)).getText();
  }

  private boolean there(String selector) {
    return open.window().scene().lookup(selector) != null;
  }

  private PracticeServer board(int baud) throws Exception {
    PracticeBoard board =
        new PracticeBoard(PracticeMachine.of(desk.profile()), 1, System.nanoTime());
    return PracticeServer.listen(0, board, new Wire(baud, false), System::nanoTime, Thread::new);
  }

  @Test
  void whatIsPluggedInAppearsAndGoes() throws Exception {
    assertThat(there("#port-0")).isFalse();
    open.plug(List.of(port("/dev/bridge0", "minder (process 7)"), port("/dev/bridge1", null)));
    open.until(() -> there("#port-1"));
    assertThat(open.on(() -> text("#port-about-0")))
        .isEqualTo("probably UART bridge · usb:10c4:ea60:A9 · in use by minder (process 7)");
    assertThat(open.on(() -> text("#port-about-1")))
        .isEqualTo("probably UART bridge · usb:10c4:ea60:A9 · free");
    open.plug(List.of());
    open.until(() -> !there("#port-0"));
  }

  @Test
  void pressingAPortConnectsToIt() throws Exception {
    try (PracticeServer server = board(115_200)) {
      open.plug(List.of(port("tcp://127.0.0.1:" + server.port(), null)));
      open.click("#port-0");
      open.until(() -> desk.link().live().get().fresh());
      assertThat(open.find("#ports").orElseThrow().isVisible()).isFalse();
      open.click("#disconnect");
      open.until(() -> desk.link().status().get().kind() == LinkStatus.Kind.NONE);
      assertThat(open.find("#ports").orElseThrow().isVisible()).isTrue();
    }
  }

  @Test
  void theBaudRateIsFoundAndCanGoIntoTheProfile() throws Exception {
    int described = desk.profile().serial().baud();
    int other = described == 57_600 ? 38_400 : 57_600;
    try (PracticeServer server = board(other)) {
      open.type("#port-address", "rfc2217://127.0.0.1:" + server.port());
      open.click("#connect-any-baud");
      open.until(() -> desk.link().live().get().fresh());
      assertThat(desk.link().foundBaud().get()).contains(other);
      assertThat(desk.profile().serial().baud()).as("not written unasked").isEqualTo(described);
      Button take = (Button) open.find("#baud-take").orElseThrow();
      assertThat(take.getText()).isEqualTo("Set the baud rate to " + other);
      open.click("#baud-take");
      assertThat(desk.profile().serial().baud()).isEqualTo(other);
      open.until(() -> !take.isVisible());
    }
  }

  @Test
  void aRateOfQueriesThatIsNoneIsSaid() throws Exception {
    open.type("#watch-rate", "often");
    open.click("#connect-practice");
    assertThat(desk.link().status().get().kind()).isEqualTo(LinkStatus.Kind.NONE);
    open.type("#watch-rate", "50 Hz");
    open.click("#connect-practice");
    open.until(() -> desk.link().live().get().fresh());
  }
}
