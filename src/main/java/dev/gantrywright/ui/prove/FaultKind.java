package dev.gantrywright.ui.prove;

import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.Texts;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** What can be wrong with the practice board, and what has to be said of each. */
enum FaultKind {
  STUCK_OPEN("stuck:%1$s:open", 1, null),
  STUCK_TRIGGERED("stuck:%1$s:triggered", 1, null),
  BROKEN("broken:%1$s", 1, null),
  SWAPPED("swapped:%1$s:%2$s", 2, null),
  SHARED("shared:%1$s:%2$s", 2, null),
  BOUNCE("bounce:%1$s:%3$s", 1, "faults.milliseconds"),
  NOISE("noise:%1$s", 1, null),
  STORED("stored:%1$s:%3$s", 1, ""),
  RESTARTS("restarts:%3$s", 0, "faults.seconds"),
  SILENCE("", 0, "faults.seconds"),
  ECHO("echo", 0, null);

  private final String form;
  private final int places;
  private final String unit;

  /**
   * @param form as {@link Fault#parse} reads it: first place, second place, number
   * @param unit key of the number's unit, empty for that of the setting; null where none is wanted
   */
  FaultKind(String form, int places, String unit) {
    this.form = form;
    this.places = places;
    this.unit = unit;
  }

  int places() {
    return places;
  }

  Optional<String> unit() {
    return Optional.ofNullable(unit);
  }

  boolean ofStored() {
    return this == STORED;
  }

  String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', '.');
  }

  String spelled(String first, String second, String number) {
    return String.format(Locale.ROOT, form, first, second, number);
  }

  /**
   * A fault in the window's words.
   *
   * @param name what the window calls an axis end or a setting
   */
  static String words(Fault fault, UnaryOperator<String> name) {
    if (fault instanceof Fault.Stuck f) {
      return of(f.touched() ? STUCK_TRIGGERED : STUCK_OPEN, name.apply(f.endstop()));
    }
    if (fault instanceof Fault.Broken f) {
      return of(BROKEN, name.apply(f.endstop()));
    }
    if (fault instanceof Fault.Swapped f) {
      return of(SWAPPED, name.apply(f.one()), name.apply(f.other()));
    }
    if (fault instanceof Fault.Shared f) {
      return of(SHARED, name.apply(f.one()), name.apply(f.other()));
    }
    if (fault instanceof Fault.Bounce f) {
      return of(BOUNCE, name.apply(f.endstop()), Shown.number(f.millis()));
    }
    if (fault instanceof Fault.Noise f) {
      return of(NOISE, name.apply(f.endstop()));
    }
    if (fault instanceof Fault.Stored f) {
      String setting = name.apply(f.axis() + "." + f.quantity().field());
      return of(STORED, setting, Shown.number(f.value()));
    }
    if (fault instanceof Fault.Restarts f) {
      return of(RESTARTS, Shown.number(f.everySeconds()));
    }
    if (fault instanceof Fault.Silence f) {
      return of(SILENCE, Shown.number(f.untilSeconds() - f.fromSeconds()));
    }
    return of(ECHO);
  }

  private static String of(FaultKind kind, Object... parts) {
    return Texts.of("faults.words." + kind.key(), parts);
  }
}
