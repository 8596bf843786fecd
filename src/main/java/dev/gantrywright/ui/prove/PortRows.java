package dev.gantrywright.ui.prove;

import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.ui.state.PortsDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What is plugged into this computer, one row a port, with what it probably is. */
final class PortRows extends VBox implements Subscription {
  private final PortsDesk desk;
  private final Consumer<String> connect;
  private final Subscriptions subscriptions = new Subscriptions();
  private boolean wanted;

  /**
   * @param connect told the name of the port that the user chose
   */
  PortRows(PortsDesk desk, Consumer<String> connect) {
    super(6);
    this.desk = desk;
    this.connect = connect;
    setId("ports");
    subscriptions.add(desk.ports().observe(this::show));
    sceneProperty().addListener((o, before, now) -> follow());
  }

  /** Shown, and the ports followed, only while no line is held. */
  void wanted(boolean on) {
    wanted = on;
    setVisible(on);
    setManaged(on);
    follow();
  }

  private void follow() {
    desk.follow(wanted && getScene() != null);
  }

  private void show(Optional<List<PortDescription>> ports) {
    getChildren().clear();
    if (ports.isEmpty() || ports.get().isEmpty()) {
      getChildren()
          .add(
              Pieces.paragraph(
                  Texts.of(ports.isEmpty() ? "ports.looking" : "ports.none"), "quiet"));
      return;
    }
    getChildren().add(Pieces.paragraph(Texts.of("ports.about"), "quiet"));
    List<PortDescription> all = ports.get();
    for (int i = 0; i < all.size(); i++) {
      getChildren().add(row(i, all.get(i)));
    }
  }

  private HBox row(int at, PortDescription port) {
    Button open =
        Pieces.button("port-" + at, port.name(), "act-second", () -> connect.accept(port.name()));
    String about = about(port);
    open.setAccessibleText(Texts.of("ports.connect", port.name(), about));
    Label words = Pieces.paragraph(about, "small");
    words.setId("port-about-" + at);
    HBox.setHgrow(words, Priority.ALWAYS);
    return Pieces.row(10, open, words);
  }

  /** What it is, then what stands in the way. */
  static String about(PortDescription port) {
    List<String> words = new ArrayList<>();
    if (!port.probably().isEmpty()) {
      words.add(Texts.of("ports.probably", port.probably()));
    } else if (!port.description().isEmpty()) {
      words.add(port.description());
    }
    port.usb().ifPresent(usb -> words.add(usb.toString()));
    port.holder().ifPresent(holder -> words.add(Texts.of("ports.held", holder)));
    if (port.holder().isEmpty()) {
      words.add(port.obstacle().isEmpty() ? Texts.of("ports.free") : port.obstacle());
    }
    return String.join(" · ", words);
  }

  @Override
  public void close() {
    subscriptions.close();
    desk.close();
  }
}
