package dev.gantrywright.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Where two profiles differ. Written out field by field: it is called for every profile of a long
 * run, and what reflection needs at the start would cost more than the comparing.
 */
public final class ChangedFields {
  private final List<String> paths = new ArrayList<>();

  private final int most;

  private ChangedFields(int most) {
    this.most = most;
  }

  private interface Each<T> {
    void compare(String prefix, T one, T other);
  }

  /**
   * The paths of the fields whose values differ. Where an axis, axis end or heater stands in one
   * profile only, or they stand in another order, the path is their group's. Keys that this version
   * does not know are not compared.
   */
  public static List<String> between(PrinterProfile one, PrinterProfile other) {
    return between(one, other, Integer.MAX_VALUE);
  }

  /** The same, but the first {@code most} of them only. */
  public static List<String> between(PrinterProfile one, PrinterProfile other, int most) {
    ChangedFields changed = new ChangedFields(most);
    changed.profile(one, other);
    return changed.paths;
  }

  private void is(String prefix, String key, Object one, Object other) {
    if (paths.size() < most && one != other && !Objects.equals(one, other)) {
      paths.add(prefix + key);
    }
  }

  private <T> void group(String name, Map<String, T> one, Map<String, T> other, Each<T> each) {
    if (!List.copyOf(one.keySet()).equals(List.copyOf(other.keySet()))) {
      paths.add(name);
      return;
    }
    one.forEach((key, value) -> each.compare(name + "." + key + ".", value, other.get(key)));
  }

  private void profile(PrinterProfile one, PrinterProfile other) {
    is("", "format", one.format(), other.format());
    is("", "name", one.name(), other.name());
    is("", "notes", one.notes(), other.notes());
    board(one.board(), other.board());
    serial(one.serial(), other.serial());
    is("", "kinematics", one.kinematics(), other.kinematics());
    group("axes", one.axes(), other.axes(), this::axis);
    group("endstops", one.endstops(), other.endstops(), this::endstop);
    group("heaters", one.heaters(), other.heaters(), this::heater);
    supply(one.supply(), other.supply());
    build(one.build(), other.build());
    link(one.link(), other.link());
    is("", "waivers", one.waivers(), other.waivers());
    printing(one.printing(), other.printing());
  }

  private void board(BoardChoice one, BoardChoice other) {
    is("board.", "sheet", one.sheet(), other.sheet());
    is("board.", "constant", one.constant(), other.constant());
    is("board.", "mcu", one.mcu(), other.mcu());
    is("board.", "target", one.target(), other.target());
  }

  private void serial(Serial one, Serial other) {
    is("serial.", "port", one.port(), other.port());
    is("serial.", "nativeUsb", one.nativeUsb(), other.nativeUsb());
    is("serial.", "baud", one.baud(), other.baud());
    is("serial.", "dataBits", one.dataBits(), other.dataBits());
    is("serial.", "parity", one.parity(), other.parity());
    is("serial.", "secondPort", one.secondPort(), other.secondPort());
  }

  private void axis(String at, Axis one, Axis other) {
    is(at, "travelMin", one.travelMin(), other.travelMin());
    is(at, "travelMax", one.travelMax(), other.travelMax());
    is(at, "stepsPerMm", one.stepsPerMm(), other.stepsPerMm());
    is(at, "maxSpeed", one.maxSpeed(), other.maxSpeed());
    is(at, "acceleration", one.acceleration(), other.acceleration());
    is(at, "directionInverted", one.directionInverted(), other.directionInverted());
    is(at, "homing.end", one.homing().end(), other.homing().end());
    is(at, "homing.speed", one.homing().speed(), other.homing().speed());
    motor(at, one.motor(), other.motor());
    driver(at, one.driver(), other.driver());
    drive(at, one.drive(), other.drive());
    is(at, "armLength", one.armLength(), other.armLength());
  }

  private void motor(String at, Motor one, Motor other) {
    is(at, "motor.fullSteps", one.fullSteps(), other.fullSteps());
    is(at, "motor.ratedCurrent", one.ratedCurrent(), other.ratedCurrent());
    is(at, "motor.ohms", one.ohms(), other.ohms());
    is(at, "motor.millihenries", one.millihenries(), other.millihenries());
  }

  private void driver(String at, Driver one, Driver other) {
    is(at, "driver.ic", one.ic(), other.ic());
    is(at, "driver.microsteps", one.microsteps(), other.microsteps());
    is(at, "driver.current", one.current(), other.current());
    is(at, "driver.senseOhms", one.senseOhms(), other.senseOhms());
    is(at, "driver.vref", one.vref(), other.vref());
    is(at, "driver.address", one.address(), other.address());
    is(at, "driver.socket", one.socket(), other.socket());
  }

  private void drive(String at, Drive one, Drive other) {
    is(at, "drive.kind", one.kind(), other.kind());
    is(at, "drive.pitch", one.pitch(), other.pitch());
    is(at, "drive.teeth", one.teeth(), other.teeth());
    is(at, "drive.lead", one.lead(), other.lead());
    is(at, "drive.gearDiameter", one.gearDiameter(), other.gearDiameter());
    is(at, "drive.ratio", one.ratio(), other.ratio());
  }

  private void endstop(String at, Endstop one, Endstop other) {
    is(at, "fitted", one.fitted(), other.fitted());
    is(at, "contact", one.contact(), other.contact());
    is(at, "sensor", one.sensor(), other.sensor());
    is(at, "input", one.input(), other.input());
    is(at, "voltage", one.voltage(), other.voltage());
    is(at, "pin", one.pin(), other.pin());
    is(at, "inverted", one.inverted(), other.inverted());
    is(at, "pullUp", one.pullUp(), other.pullUp());
    is(at, "probe", one.probe(), other.probe());
    is(at, "probeOffset", one.probeOffset(), other.probeOffset());
    is(at, "interrupt", one.interrupt(), other.interrupt());
  }

  private void heater(String at, Heater one, Heater other) {
    is(at, "sensor", one.sensor(), other.sensor());
    is(at, "pullUpOhms", one.pullUpOhms(), other.pullUpOhms());
    is(at, "minimum", one.minimum(), other.minimum());
    is(at, "maximum", one.maximum(), other.maximum());
    is(at, "watts", one.watts(), other.watts());
    is(at, "volts", one.volts(), other.volts());
    is(at, "protection", one.protection(), other.protection());
    is(at, "output", one.output(), other.output());
    is(at, "input", one.input(), other.input());
    is(at, "rated", one.rated(), other.rated());
    is(at, "control", one.control(), other.control());
    is(at, "wire", one.wire(), other.wire());
    is(at, "wireLength", one.wireLength(), other.wireLength());
    is(at, "earthed", one.earthed(), other.earthed());
    is(at, "relayAmps", one.relayAmps(), other.relayAmps());
    is(at, "cutoff", one.cutoff(), other.cutoff());
    is(at, "ohms", one.ohms(), other.ohms());
  }

  private void supply(Supply one, Supply other) {
    is("supply.", "volts", one.volts(), other.volts());
    is("supply.", "amps", one.amps(), other.amps());
    is("supply.", "fuseAmps", one.fuseAmps(), other.fuseAmps());
    is("supply.", "wire", one.wire(), other.wire());
    is("supply.", "wireLength", one.wireLength(), other.wireLength());
  }

  private void build(BuildSettings one, BuildSettings other) {
    is("build.", "folder", one.folder(), other.folder());
    is("build.", "names", one.names(), other.names());
    is("build.", "command", one.command(), other.command());
    is("build.", "environment", one.environment(), other.environment());
    is("build.", "artefact", one.artefact(), other.artefact());
    is("build.", "flash", one.flash(), other.flash());
    is("build.", "image.bytes", one.image().bytes(), other.image().bytes());
    is("build.", "image.ramBytes", one.image().ramBytes(), other.image().ramBytes());
    is("build.", "image.address", one.image().address(), other.image().address());
  }

  private void link(LinkSettings one, LinkSettings other) {
    is("link.", "endstopQuery", one.endstopQuery(), other.endstopQuery());
    is("link.", "settingsQuery", one.settingsQuery(), other.settingsQuery());
    is("link.", "identityQuery", one.identityQuery(), other.identityQuery());
    is("link.", "stop", one.stop(), other.stop());
    is("link.", "triggeredWords", one.triggeredWords(), other.triggeredWords());
    is("link.", "openWords", one.openWords(), other.openWords());
    is("link.", "endstopNames", one.endstopNames(), other.endstopNames());
    is("link.", "usb", one.usb(), other.usb());
    is("link.", "baud", one.baud(), other.baud());
  }

  private void printing(Printing one, Printing other) {
    is("printing.", "layerHeight", one.layerHeight(), other.layerHeight());
    is("printing.", "speed", one.speed(), other.speed());
    is("printing.", "bedX", one.bedX(), other.bedX());
    is("printing.", "bedY", one.bedY(), other.bedY());
  }
}
