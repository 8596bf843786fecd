package dev.gantrywright.ui.prove;

import dev.gantrywright.app.PortMemory;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.ui.state.LinkDesk;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Where the machine is reached, and how the line stands. */
final class ConnectionBar extends VBox {
  private static final double HERTZ = 20;

  private final PrinterDesk desk;
  private final TextField address = new TextField("practice:");
  private final Button practice;
  private final Button connect;
  private final Button again;
  private final Button disconnect;
  private final Button rebuild;
  private final Label words = Pieces.paragraph("", "quiet");

  ConnectionBar(PrinterDesk desk) {
    super(8);
    this.desk = desk;
    PortMemory.kept(desk.profile().link()).ifPresent(port -> address.setText(port.toString()));
    address.setId("port-address");
    address.setAccessibleText(Texts.of("prove.port"));
    address.setPrefColumnCount(18);
    HBox box = new HBox(address);
    box.getStyleClass().add("field-box");
    practice =
        Pieces.button(
            "connect-practice", Texts.of("prove.practice"), "act", () -> open("practice:"));
    connect =
        Pieces.button(
            "connect", Texts.of("prove.connect"), "act-second", () -> open(address.getText()));
    again =
        Pieces.button(
            "connect-again",
            Texts.of("prove.again"),
            "act",
            () -> desk.link().reconnect(desk.profile()));
    disconnect =
        Pieces.button(
            "disconnect", Texts.of("prove.disconnect"), "act-second", desk.link()::disconnect);
    rebuild =
        Pieces.button(
            "practice-rebuild", Texts.of("prove.rebuild"), "act", () -> open("practice:"));
    address.setOnAction(enter -> open(address.getText()));
    Label label = Pieces.label(Texts.of("prove.port"), "field-label");
    label.setLabelFor(address);
    label.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
    getChildren()
        .addAll(Pieces.row(12, practice, label, box, connect, again, disconnect, rebuild), words);
  }

  private void open(String text) {
    LinkDesk link = desk.link();
    try {
      link.connect(
          desk.profile(), PortMemory.address(text, desk.profile().link()), HERTZ, desk.firmware());
    } catch (LinkException unreadable) {
      words.setText(unreadable.getMessage());
    }
  }

  void show() {
    LinkStatus status = desk.link().status().get();
    boolean held = status.held();
    show(practice, !held);
    // A line that could not be opened or was lost can be tried again at once.
    boolean lost = status.kind() == LinkStatus.Kind.LOST;
    show(again, lost);
    show(connect, !held);
    show(disconnect, held);
    address.setDisable(held);
    boolean old =
        desk.link().built() != null
            && !desk.link().built().endstops().equals(desk.profile().endstops());
    show(rebuild, old);
    words.setText(
        old
            ? Texts.of("prove.oldFirmware")
            : held ? status.port() + ": " + status.words() : Texts.of("prove.invite"));
  }

  private static void show(Button button, boolean on) {
    button.setVisible(on);
    button.setManaged(on);
  }
}
