package dev.gantrywright.ui.describe;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/** Picks from the catalogue and from the open board sheet. */
public final class CatalogPickers implements Pickers {
  private final Catalog catalog;
  private final Supplier<Optional<BoardSheet>> sheet;

  public CatalogPickers(Catalog catalog, Supplier<Optional<BoardSheet>> sheet) {
    this.catalog = catalog;
    this.sheet = sheet;
  }

  @Override
  public List<PickerChoice> choices(String path) {
    String[] keys = path.split("\\.", 3);
    String last = keys[keys.length - 1];
    return switch (last) {
      case "mcu" -> mcus();
      case "driver.ic" -> drivers();
      case "drive.pitch" -> belts();
      case "drive.lead" -> screws();
      case "driver.socket" -> names(sheet.get().map(BoardSheet::sockets));
      case "pin" -> names(sheet.get().map(BoardSheet::inputs));
      case "output" -> names(sheet.get().map(BoardSheet::outputs));
      case "input" ->
          keys[0].equals("heaters") ? names(sheet.get().map(BoardSheet::sensors)) : List.of();
      case "sensor" -> keys[0].equals("heaters") ? sensors() : List.of();
      case "port", "secondPort" -> ports();
      default -> List.of();
    };
  }

  @Override
  public Optional<String> toMind(String path, String value) {
    if (!path.endsWith(".driver.ic")) {
      return Optional.empty();
    }
    return catalog
        .driver(value)
        .filter(driver -> !driver.caution().isEmpty())
        .map(driver -> Texts.of("help.part", driver.ic(), driver.caution(), driver.source()));
  }

  private List<PickerChoice> mcus() {
    return catalog.mcus().stream()
        .map(
            mcu ->
                new PickerChoice(
                    mcu.part(),
                    mcu.core()
                        + " · "
                        + mcu.flashBytes() / 1024
                        + " KiB · "
                        + Shown.number(mcu.clockHz() / 1e6)
                        + " MHz"))
        .toList();
  }

  private List<PickerChoice> drivers() {
    return catalog.drivers().stream()
        .map(
            driver ->
                new PickerChoice(
                    driver.ic(),
                    driver.maker()
                        + " · "
                        + Shown.number(driver.supplyLeastVolts())
                        + "…"
                        + Shown.number(driver.supplyMostVolts())
                        + " V"))
        .toList();
  }

  private List<PickerChoice> sensors() {
    return catalog.sensors().stream()
        .map(
            sensor ->
                new PickerChoice(
                    sensor.id(),
                    sensor.name()
                        + " · "
                        + Shown.number(sensor.leastCelsius())
                        + "…"
                        + Shown.number(sensor.mostCelsius())
                        + " °C"))
        .toList();
  }

  private List<PickerChoice> belts() {
    return catalog.belts().stream()
        .map(
            belt ->
                new PickerChoice(
                    Shown.number(belt.pitchMm()), belt.designation() + " · " + belt.standard()))
        .toList();
  }

  /** Lead is pitch times starts; screws with one, two and four starts are sold (memory). */
  private List<PickerChoice> screws() {
    List<PickerChoice> choices = new ArrayList<>();
    catalog
        .screws()
        .forEach(
            screw -> {
              for (int starts : new int[] {1, 2, 4}) {
                choices.add(
                    new PickerChoice(
                        Shown.number(screw.pitchMm() * starts),
                        screw.designation()
                            + " · "
                            + starts
                            + (starts == 1 ? " start" : " starts")));
              }
            });
    return choices;
  }

  private static List<PickerChoice> names(Optional<? extends Map<String, ?>> map) {
    return map.map(
            names -> names.keySet().stream().map(name -> new PickerChoice(name, "")).toList())
        .orElse(List.of());
  }

  private List<PickerChoice> ports() {
    return sheet
        .get()
        .map(
            board ->
                board.ports().stream()
                    .filter(port -> port.index() != null)
                    .map(
                        port ->
                            new PickerChoice(
                                Integer.toString(port.index()),
                                port.label()
                                    + (Boolean.FALSE.equals(port.routed())
                                        ? " · reaches no connector"
                                        : "")))
                    .toList())
        .orElse(List.of());
  }
}
