package dev.gantrywright.ui.state;

import dev.gantrywright.app.History;
import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.ui.quantity.Shown;
import java.time.Clock;
import java.util.Optional;
import java.util.function.UnaryOperator;
import tools.jackson.databind.JsonNode;

/** The profile in hand: its values, its edits by name, undo and redo. */
public final class ProfileDesk {
  private final Clock clock;
  private final Cell<History<PrinterProfile>> history;
  private PrinterProfile begunFrom;
  private String begunPath = "";
  private String begun = "";

  public ProfileDesk(PrinterProfile profile, Clock clock) {
    this.clock = clock;
    this.history = new Cell<>(History.of(profile));
  }

  public Cell<History<PrinterProfile>> history() {
    return history;
  }

  public PrinterProfile profile() {
    return history.get().present();
  }

  public long revision() {
    return history.get().revision();
  }

  /** The value at a field path. */
  public Optional<JsonNode> value(String path) {
    return ProfileValues.get(profile(), path);
  }

  /** The value as text, as history and messages quote it; "not given" where there is none. */
  public String quoted(String path) {
    return value(path).map(ProfileDesk::quoted).orElse(Texts.of("value.none"));
  }

  /** A value as history, messages and previews quote it. */
  public static String quoted(JsonNode node) {
    if (node.isNumber()) {
      return Shown.grouped(node.asDouble());
    }
    if (node.isBoolean()) {
      return Texts.of(node.asBoolean() ? "value.yes" : "value.no");
    }
    return node.isString() ? node.asString() : node.toString();
  }

  /**
   * Sets one field.
   *
   * @param value number, boolean, text, list or map; null takes it away
   * @return one clear line where the field does not take it; nothing has changed then
   */
  public Optional<String> edit(String path, Object value) {
    PrinterProfile changed;
    try {
      changed = ProfileValues.with(profile(), path, value);
    } catch (ProfileProblem refused) {
      return Optional.of(reason(refused, path));
    }
    PrinterProfile from = history.get().before(path, clock.instant());
    String before = from == profile() ? quoted(path) : begunWith(from, path);
    String after =
        value instanceof Number number
            ? Shown.grouped(number.doubleValue())
            : ProfileValues.get(changed, path)
                .map(ProfileDesk::quoted)
                .orElse(Texts.of("value.none"));
    change(PlaceNames.field(path) + " " + before + " → " + after, path, ignored -> changed);
    return Optional.empty();
  }

  /** What stood in the field before the typing began; asked for with each key of it. */
  private String begunWith(PrinterProfile from, String path) {
    if (begunFrom != from || !begunPath.equals(path)) {
      begun = ProfileValues.get(from, path).map(ProfileDesk::quoted).orElse(Texts.of("value.none"));
      begunFrom = from;
      begunPath = path;
    }
    return begun;
  }

  private static String reason(ProfileProblem refused, String path) {
    String line = refused.getMessage();
    int colon = line.lastIndexOf(": ");
    String said = colon < 0 ? line : line.substring(colon + 2);
    Optional<Field> field = Fields.at(path);
    return field.map(Field::label).map(label -> label + " " + said).orElse(said);
  }

  /** A named change of the whole profile, such as a remedy. */
  public void change(String label, String mergeKey, UnaryOperator<PrinterProfile> change) {
    history.update(now -> now.edit(label, mergeKey, change.apply(now.present()), clock.instant()));
  }

  public void undo() {
    history.update(History::undo);
  }

  public void redo() {
    history.update(History::redo);
  }

  /** This profile has reached the disk, whatever was typed since. */
  public void markSaved(PrinterProfile onDisk) {
    history.update(now -> now.markSaved(onDisk));
  }
}
