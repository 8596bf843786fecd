package dev.gantrywright.reference;

import dev.gantrywright.catalog.Ampacity;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.McuFamily;
import dev.gantrywright.catalog.PullResistor;
import dev.gantrywright.physics.Fuse;
import dev.gantrywright.physics.HeaterPower;
import dev.gantrywright.physics.InputLevel;
import dev.gantrywright.physics.Wire;
import java.text.DecimalFormat;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Group 8: conductors, fuses, heaters, inputs. */
final class ElectricalRows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  ElectricalRows() {
    super("G08_electrical");
    formula("awg_d", Wire.class, row -> Wire.gaugeDiameterMm(row.whole("n")));
    formula("awg_a", Wire.class, row -> Wire.gaugeAreaMm2(row.whole("n")));
    formula(
        "vdrop",
        Wire.class,
        row -> Wire.dropVolts(row.number("i"), row.number("length"), row.number("area")));
    formula("derate", Wire.class, row -> Wire.deratedAmps(row.number("i"), row.number("k")));
    formula(
        "fuse_min", Fuse.class, row -> Fuse.leastRatingAmps(row.number("i"), row.number("frac")));
    formula(
        "heater_r", HeaterPower.class, row -> HeaterPower.ohms(row.number("v"), row.number("p")));
    formula(
        "heater_i", HeaterPower.class, row -> HeaterPower.amps(row.number("v"), row.number("p")));
    formula(
        "heater_p", HeaterPower.class, row -> HeaterPower.watts(row.number("v"), row.number("r")));
    formula(
        "p_ratio",
        HeaterPower.class,
        row -> HeaterPower.powerRatio(row.number("vnew"), row.number("vold")));
    formula(
        "vih",
        InputLevel.class,
        row -> InputLevel.thresholdVolts(row.number("k"), row.number("vcc")));
    formula(
        "margin",
        InputLevel.class,
        row -> InputLevel.highMarginVolts(row.number("voh"), row.number("vih_")));
    formula(
        "divider",
        InputLevel.class,
        row -> InputLevel.dividedVolts(row.number("vcc"), row.number("rtop"), row.number("rbot")));
    formula(
        "pull_i_ua",
        InputLevel.class,
        row -> InputLevel.pullAmps(row.number("v"), row.number("r")) * 1e6);
    formula(
        "rc_tau_ms",
        InputLevel.class,
        row -> InputLevel.timeConstantSeconds(row.number("r"), row.number("c_nf") * 1e-9) * 1e3);
    formula(
        "debounce_n",
        InputLevel.class,
        row -> InputLevel.debounceSamples(row.number("tb_ms") * 1e-3, row.number("ts_ms") * 1e-3));
  }

  @Override
  protected Use fact(HandbookRow row) {
    if (row.has("method")) {
      return Use.number(
          CATALOG
              .ampacity(row.number("size"), row.text("method"), row.number("t"))
              .map(Ampacity::amps)
              .orElseThrow(),
          Catalog.class);
    }
    if (row.has("size")) {
      return Use.text(machineAmps(row.number("size")), Catalog.class);
    }
    return switch (row.quantity()) {
      case "STM32F103 pull-up min" -> Use.number(up("STM32F1").leastOhms() / 1e3, Catalog.class);
      case "STM32F103 pull-up typ" -> Use.number(up("STM32F1").typicalOhms() / 1e3, Catalog.class);
      case "STM32F103 pull-up max" -> Use.number(up("STM32F1").mostOhms() / 1e3, Catalog.class);
      case "STM32F103 FT pin absolute input limit for VDD > 2 V" ->
          Use.number(family("STM32F1").inputToleranceVolts(), Catalog.class);
      case "STM32F103 FT pin above VDD+0.3 V" ->
          Use.text(
              family("STM32F1").toleranceLostWithPull()
                  ? "internal pull-up and pull-down must be off"
                  : "",
              Catalog.class);
      case "ATmega I/O pull-up min" -> Use.number(up("AVR").leastOhms() / 1e3, Catalog.class);
      case "ATmega I/O pull-up max" -> Use.number(up("AVR").mostOhms() / 1e3, Catalog.class);
      case "RP2040 pull-up min" -> Use.number(up("RP2040").leastOhms() / 1e3, Catalog.class);
      case "RP2040 pull-up max" -> Use.number(up("RP2040").mostOhms() / 1e3, Catalog.class);
      case "RP2040 GPIO 5 V tolerant" -> Use.text(bears5V("RP2040"), Catalog.class);
      case "SAM3X8E GPIO 5 V tolerant" -> Use.text(bears5V("SAM3X"), Catalog.class);
      case "SAM3X8E pull-up" -> Use.text(range(up("SAM3X")), Catalog.class);
      case "ESP32 pull-up typ" -> Use.number(up("ESP32").typicalOhms() / 1e3, Catalog.class);
      default -> Use.none("no part of the program uses this fact");
    };
  }

  private static String machineAmps(double size) {
    return Stream.of("B1", "B2", "C", "E")
        .map(method -> CATALOG.ampacity(size, "machine " + method, 40).orElseThrow().amps())
        .map(amps -> new DecimalFormat("0.#").format(amps).replace(',', '.'))
        .collect(Collectors.joining("/"));
  }

  private static McuFamily family(String id) {
    return CATALOG.mcus().stream()
        .filter(mcu -> mcu.family().equals(id))
        .findFirst()
        .orElseThrow()
        .familyFacts();
  }

  private static PullResistor up(String id) {
    return family(id).pullUp().orElseThrow();
  }

  private static String bears5V(String id) {
    return family(id).inputToleranceVolts() >= 5 ? "yes" : "no";
  }

  private static String range(PullResistor pull) {
    return Math.round(pull.leastOhms() / 1e3) + ".." + Math.round(pull.mostOhms() / 1e3);
  }
}
