package dev.gantrywright.ui.state;

import dev.gantrywright.machine.BoardPort;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.DriverSocket;
import dev.gantrywright.machine.LoaderMedium;
import dev.gantrywright.machine.PortKind;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Serial;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.BoardWiring.Kind;
import dev.gantrywright.ui.state.BoardWiring.Row;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * Puts {@link BoardWiring} together: every connector of the sheet, then what only the profile
 * names.
 */
final class BoardRows {
  private final PrinterProfile profile;
  private final Optional<BoardSheet> sheet;
  private final PinUses pins = new PinUses();
  private final List<Row> left = new ArrayList<>();
  private final List<Row> right = new ArrayList<>();

  BoardRows(PrinterProfile profile, Optional<BoardSheet> sheet) {
    this.profile = profile;
    this.sheet = sheet;
    drivers();
    ports();
    card();
    endstops();
    heaters();
    supply();
  }

  BoardWiring wiring() {
    String part = sheet.map(BoardSheet::mcu).orElse(profile.board().mcu());
    String clock =
        sheet
            .map(BoardSheet::clockHz)
            .map(hertz -> Shown.number(hertz / 1e6) + "\u00a0MHz")
            .orElse("");
    return new BoardWiring(
        sheet.map(BoardSheet::name).orElse(""),
        part == null ? "" : part,
        clock,
        sheet.isPresent(),
        marked(left),
        marked(right),
        pins.troubles());
  }

  /** The rows, each with those of its pins that turned out to have another job. */
  private List<Row> marked(List<Row> rows) {
    return rows.stream()
        .map(
            row ->
                new Row(
                    row.kind(),
                    row.label(),
                    row.detail(),
                    row.pins(),
                    row.plugged(),
                    row.opens(),
                    row.onBoard(),
                    row.reached(),
                    row.plugged().isEmpty()
                        ? List.of()
                        : row.pins().stream().filter(pins::twice).toList()))
        .toList();
  }

  private static String or(String text) {
    return text == null ? "" : text;
  }

  private void drivers() {
    Map<String, DriverSocket> sockets = sheet.map(BoardSheet::sockets).orElse(Map.of());
    Set<String> placed = new HashSet<>();
    sockets.forEach(
        (label, socket) -> {
          List<String> axes =
              profile.axes().entrySet().stream()
                  .filter(
                      each ->
                          label.equalsIgnoreCase(
                              DriverPlace.socketOf(each.getKey(), each.getValue())))
                  .map(Map.Entry::getKey)
                  .toList();
          placed.addAll(axes);
          left.add(driver(label, socket, axes));
        });
    profile
        .axes()
        .forEach(
            (name, axis) -> {
              if (!placed.contains(name)) {
                left.add(
                    row(
                        Kind.DRIVER,
                        or(axis.driver().socket()),
                        or(axis.driver().ic()),
                        List.of(),
                        PlaceNames.part("axes." + name),
                        "axes." + name,
                        false));
              }
            });
  }

  private Row driver(String label, DriverSocket socket, List<String> axes) {
    for (String name : axes) {
      String axis = PlaceNames.part("axes." + name);
      pins.add(socket.step(), Texts.of("board.job.step", axis));
      pins.add(socket.direction(), Texts.of("board.job.direction", axis));
      pins.add(socket.enable(), Texts.of("board.job.enable"));
      pins.add(socket.uart(), Texts.of("board.job.line"));
    }
    String first = axes.isEmpty() ? "" : axes.get(0);
    return row(
        Kind.DRIVER,
        label,
        axes.isEmpty() ? "" : or(profile.axes().get(first).driver().ic()),
        List.of(or(socket.step()), or(socket.direction()), or(socket.enable()), or(socket.uart())),
        String.join(", ", axes.stream().map(name -> PlaceNames.part("axes." + name)).toList()),
        axes.isEmpty() ? "" : "axes." + first,
        true);
  }

  private void ports() {
    Serial serial = profile.serial();
    List<BoardPort> ports = sheet.map(BoardSheet::ports).orElse(List.of());
    boolean first = false;
    boolean second = false;
    for (BoardPort port : ports) {
      boolean usb = port.kind() == PortKind.USB;
      boolean here =
          serial.port() != null
              ? serial.port().equals(port.index())
              : usb && Boolean.TRUE.equals(serial.nativeUsb());
      boolean too = serial.secondPort() != null && serial.secondPort().equals(port.index());
      first |= here;
      second |= too;
      left.add(port(port, here, too));
    }
    if (!first && (serial.port() != null || serial.nativeUsb() != null || sheet.isEmpty())) {
      left.add(stray(serial.port(), "board.console"));
    }
    if (!second && serial.secondPort() != null) {
      left.add(stray(serial.secondPort(), "board.second"));
    }
  }

  private Row port(BoardPort port, boolean here, boolean too) {
    String kind = Texts.of(port.kind() == PortKind.USB ? "board.usb" : "board.uart");
    String used = here ? Texts.of("board.console") : too ? Texts.of("board.second") : "";
    if (!used.isEmpty()) {
      port.pins().forEach(pin -> pins.add(pin, used));
    }
    String number = port.uart() == null ? "" : port.uart().toString();
    return new Row(
        Kind.PORT,
        port.label() == null ? kind + number : port.label(),
        port.index() == null ? "" : port.index().toString(),
        port.pins(),
        used,
        "serial",
        true,
        !Boolean.FALSE.equals(port.routed()),
        List.of());
  }

  private Row stray(Integer index, String key) {
    String number = index == null ? "" : index.toString();
    return row(Kind.PORT, "", number, List.of(), Texts.of(key), "serial", false);
  }

  private void card() {
    sheet
        .map(BoardSheet::loader)
        .filter(loader -> loader.medium() == LoaderMedium.CARD)
        .ifPresent(
            loader ->
                left.add(
                    row(
                        Kind.CARD,
                        Texts.of("board.card"),
                        "",
                        List.of(),
                        or(loader.looksFor()),
                        "",
                        true)));
  }

  private void endstops() {
    group(
        Kind.INPUT,
        sheet.map(BoardSheet::inputs).orElse(Map.of()),
        input -> or(input.pin()),
        profile.endstops().entrySet().stream()
            .filter(each -> Boolean.TRUE.equals(each.getValue().fitted()))
            .map(
                each ->
                    new Plug(
                        "endstops." + each.getKey(),
                        PlaceNames.endstop(each.getKey()),
                        Texts.of("board.job.endstop", PlaceNames.endstop(each.getKey())),
                        each.getValue().pin()))
            .toList());
  }

  private void heaters() {
    group(
        Kind.OUTPUT,
        sheet.map(BoardSheet::outputs).orElse(Map.of()),
        output -> or(output.pin()),
        profile.heaters().entrySet().stream()
            .map(each -> heater(each.getKey(), each.getValue().output(), "board.job.heater"))
            .toList());
    group(
        Kind.SENSOR,
        sheet.map(BoardSheet::sensors).orElse(Map.of()),
        sensor -> or(sensor.pin()),
        profile.heaters().entrySet().stream()
            .map(each -> heater(each.getKey(), each.getValue().input(), "board.job.sensor"))
            .toList());
  }

  private static Plug heater(String name, String connector, String key) {
    String id = "heaters." + name;
    String part = PlaceNames.part(id);
    return new Plug(id, part, Texts.of(key, part), connector);
  }

  /**
   * What the machine has.
   *
   * @param job what a pin does for it
   * @param connector that the profile plugs it into; null for none
   */
  private record Plug(String id, String words, String job, String connector) {}

  private <C> void group(
      Kind kind, Map<String, C> connectors, Function<C, String> pinOf, List<Plug> plugs) {
    connectors.forEach(
        (label, connector) -> {
          List<Plug> here = plugs.stream().filter(each -> label.equals(each.connector())).toList();
          here.forEach(each -> pins.add(pinOf.apply(connector), each.job()));
          right.add(
              row(
                  kind,
                  label,
                  "",
                  List.of(pinOf.apply(connector)),
                  String.join(", ", here.stream().map(Plug::words).toList()),
                  here.isEmpty() ? "" : here.get(0).id(),
                  true));
        });
    for (Plug plug : plugs) {
      if (plug.connector() == null || !connectors.containsKey(plug.connector())) {
        String label = or(plug.connector());
        right.add(row(kind, label, "", List.of(), plug.words(), plug.id(), false));
      }
    }
  }

  private void supply() {
    Double volts = profile.supply().volts();
    Double amps = profile.supply().amps();
    String given = volts == null ? "" : Shown.number(volts) + "\u00a0V";
    String whole = amps == null ? given : (given + " · " + Shown.number(amps) + "\u00a0A");
    String fed = whole.isEmpty() ? Texts.of("board.unknown") : whole;
    String range =
        sheet
            .map(BoardSheet::supply)
            .filter(each -> each.minVolts() != null && each.maxVolts() != null)
            .map(
                each ->
                    Shown.number(each.minVolts()) + "…" + Shown.number(each.maxVolts()) + "\u00a0V")
            .orElse("");
    right.add(row(Kind.SUPPLY, range, "", List.of(), fed, "printer", !range.isEmpty()));
  }

  private static Row row(
      Kind kind,
      String label,
      String detail,
      List<String> pins,
      String plugged,
      String opens,
      boolean onBoard) {
    return new Row(kind, label, detail, pins, plugged, opens, onBoard, true, List.of());
  }
}
