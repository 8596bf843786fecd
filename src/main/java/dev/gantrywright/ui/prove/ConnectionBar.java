package dev.gantrywright.ui.prove;

import dev.gantrywright.app.PortMemory;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.LinkDesk;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PortsDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Where the machine is reached, and how the line stands. */
final class ConnectionBar extends VBox implements Subscription {
  private static final double HERTZ = 20;
  private static final double MOST_HERTZ = 10_000;

  private final PrinterDesk desk;
  private final TextField address = new TextField("practice:");
  private final TextField rate = new TextField("20");
  private final Button practice;
  private final Button connect;
  private final Button anyBaud;
  private final Button again;
  private final Button disconnect;
  private final Button rebuild;
  private final Button takeBaud;
  private final Label words = Pieces.paragraph("", "quiet");
  private final PortRows ports;
  private final Subscriptions subscriptions = new Subscriptions();

  ConnectionBar(PrinterDesk desk, PortsDesk plugged) {
    super(8);
    this.desk = desk;
    PortMemory.kept(desk.profile().link()).ifPresent(port -> address.setText(port.toString()));
    HBox box = Section.field(address, "port-address", "prove.port", 18);
    HBox pace = Section.field(rate, "watch-rate", "prove.rate", 4);
    practice =
        Pieces.button(
            "connect-practice", Texts.of("prove.practice"), "act", () -> open("practice:", false));
    connect =
        Pieces.button(
            "connect",
            Texts.of("prove.connect"),
            "act-second",
            () -> open(address.getText(), false));
    anyBaud =
        Pieces.button(
            "connect-any-baud",
            Texts.of("prove.anyBaud"),
            "act-second",
            () -> open(address.getText(), true));
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
            "practice-rebuild", Texts.of("prove.rebuild"), "act", () -> open("practice:", false));
    takeBaud = Pieces.button("baud-take", "", "act-second", this::takeBaud);
    address.setOnAction(enter -> open(address.getText(), false));
    rate.setOnAction(enter -> pace());
    ports = new PortRows(plugged, this::chosen);
    getChildren()
        .addAll(
            Section.fields(
                practice, box, connect, anyBaud, again, disconnect, rebuild, takeBaud, pace),
            words,
            ports);
    subscriptions.add(desk.link().foundBaud().listen(found -> show()));
  }

  private void chosen(String port) {
    address.setText(port);
    open(port, false);
  }

  private void open(String text, boolean search) {
    LinkDesk link = desk.link();
    Optional<Double> hertz = hertz();
    if (hertz.isEmpty()) {
      words.setText(Texts.of("prove.rate.wrong"));
      return;
    }
    try {
      PortAddress port = PortMemory.address(text, desk.profile().link());
      if (search) {
        link.connectAtAnyBaud(desk.profile(), port, hertz.get());
      } else {
        link.connect(desk.profile(), port, hertz.get(), desk.firmware());
      }
    } catch (LinkException unreadable) {
      words.setText(unreadable.getMessage());
    }
  }

  /** Queries a second as typed; 20 where the field is empty. */
  private Optional<Double> hertz() {
    String typed = rate.getText().replaceAll("(?i)hz", "").replace(',', '.').strip();
    try {
      double value = typed.isEmpty() ? HERTZ : Double.parseDouble(typed);
      return value >= 0 && value <= MOST_HERTZ ? Optional.of(value) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private void pace() {
    hertz()
        .ifPresentOrElse(desk.link()::watchAt, () -> words.setText(Texts.of("prove.rate.wrong")));
  }

  private void takeBaud() {
    desk.link()
        .foundBaud()
        .get()
        .flatMap(baud -> desk.values().edit("serial.baud", baud))
        .ifPresent(desk.link().said()::set);
    show();
  }

  void show() {
    LinkStatus status = desk.link().status().get();
    boolean held = status.held();
    show(practice, !held);
    // A line that could not be opened or was lost can be tried again at once.
    boolean lost = status.kind() == LinkStatus.Kind.LOST;
    show(again, lost);
    show(connect, !held);
    show(anyBaud, !held);
    show(disconnect, held);
    address.setDisable(held);
    // On one line with what stands beside it, so that the endstops keep their room.
    address.setPrefColumnCount(held ? 11 : 18);
    ports.wanted(!held);
    boolean old =
        desk.link().built() != null
            && !desk.link().built().endstops().equals(desk.profile().endstops());
    show(rebuild, old);
    Optional<Integer> other =
        desk.link().foundBaud().get().filter(baud -> !baud.equals(desk.profile().serial().baud()));
    show(takeBaud, other.isPresent());
    other.ifPresent(baud -> takeBaud.setText(Texts.of("prove.takeBaud", String.valueOf(baud))));
    words.setText(
        old ? Texts.of("prove.oldFirmware") : held ? standing(status) : Texts.of("prove.invite"));
  }

  private String standing(LinkStatus status) {
    String line = status.port() + ": " + status.words();
    return desk.link()
        .foundBaud()
        .get()
        .map(baud -> line + "; " + found(baud, desk.profile().serial().baud()))
        .orElse(line);
  }

  private static String found(int baud, Integer described) {
    String rate = String.valueOf(baud);
    if (described == null) {
      return Texts.of("prove.foundBaud.none", rate);
    }
    return baud == described
        ? Texts.of("prove.foundBaud.same", rate)
        : Texts.of("prove.foundBaud", rate, String.valueOf(described));
  }

  private static void show(Button button, boolean on) {
    button.setVisible(on);
    button.setManaged(on);
  }

  @Override
  public void close() {
    subscriptions.close();
    ports.close();
  }
}
