package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One open printer: its values, what was found, what is in hand. */
public final class PrinterDesk {
  private final PartTable parts = PartTable.shipped();
  private final ProfileDesk values;
  private final Cell<List<Remark>> remarks = new Cell<>(List.of());
  private final Cell<Stage> stage = new Cell<>(Stage.DESCRIBE);
  private final Cell<String> part = new Cell<>("printer");
  private final Cell<Optional<String>> focus = new Cell<>(Optional.empty());

  public PrinterDesk(ProfileDesk values) {
    this.values = values;
  }

  public ProfileDesk values() {
    return values;
  }

  public PrinterProfile profile() {
    return values.profile();
  }

  /** What the rules found, worst first. */
  public Cell<List<Remark>> remarks() {
    return remarks;
  }

  public Cell<Stage> stage() {
    return stage;
  }

  /** Id of the part in hand. */
  public Cell<String> part() {
    return part;
  }

  /** The field that asks for the keyboard; taken by the view that shows it. */
  public Cell<Optional<String>> focus() {
    return focus;
  }

  public List<Part> parts() {
    return parts.parts(profile());
  }

  public Optional<Part> partInHand() {
    return parts().stream().filter(each -> each.id().equals(part.get())).findFirst();
  }

  /** The gravest remark of each part that has one. */
  public Map<String, Gravity> marks() {
    return Remarks.byPart(profile(), parts, remarks.get());
  }

  /** Opens the part that holds a field and gives the field the keyboard. */
  public void goTo(String path) {
    parts
        .partOf(profile(), path)
        .or(() -> parts().stream().filter(each -> each.id().equals(path)).findFirst())
        .ifPresent(
            found -> {
              part.set(found.id());
              stage.set(Stage.DESCRIBE);
              focus.set(Optional.of(path));
            });
  }

  /** Applies a remark's fix as one named edit. */
  public void apply(Remark remark, Remark.Fix fix) {
    values.change(fix.title() + " (" + remark.place() + ")", "", fix.change());
  }
}
