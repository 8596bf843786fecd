package dev.gantrywright.ui.prove;

import dev.gantrywright.link.practice.AxisMotion;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.ui.state.Endstops;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PracticeFaults;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.util.StringConverter;

/** Makes the practice board a machine with something wrong, so that finding it can be practised. */
final class FaultsPanel extends Section {
  private final PrinterDesk desk;
  private final PracticeFaults faults;
  private final ComboBox<FaultKind> kind = new ComboBox<>();
  private final ComboBox<String> first = new ComboBox<>();
  private final ComboBox<String> second = new ComboBox<>();
  private final TextField number = new TextField();
  private final Label unit = Pieces.label("", "quiet");
  private final HBox numberBox;
  private final Label trouble = Pieces.paragraph("", "quiet");
  private final FlowPane chips = new FlowPane(8, 8);

  FaultsPanel(PrinterDesk desk) {
    super("faults.title", "faults.about");
    this.desk = desk;
    faults = desk.link().faults();
    kind.setId("fault-kind");
    kind.setAccessibleText(Texts.of("faults.kind"));
    kind.getItems().setAll(FaultKind.values());
    kind.setConverter(words(each -> Texts.of("faults.kind." + each.key())));
    place(first, "fault-first", "faults.first");
    place(second, "fault-second", "faults.second");
    numberBox = Pieces.row(8, field(number, "fault-number", "faults.number", 6), unit);
    number.setOnAction(enter -> add());
    Button add = Pieces.button("fault-add", Texts.of("faults.add"), "act-second", this::add);
    getChildren().addAll(fields(kind, first, second, numberBox, add), trouble, chips);
    kind.valueProperty().addListener((o, before, now) -> parts());
    kind.setValue(FaultKind.STUCK_OPEN);
    show(trouble, false);
    standing();
  }

  private static void place(ComboBox<String> box, String id, String key) {
    box.setId(id);
    box.setAccessibleText(Texts.of(key));
    box.setConverter(words(FaultsPanel::name));
  }

  private static <T> StringConverter<T> words(java.util.function.Function<T, String> name) {
    return new StringConverter<>() {
      @Override
      public String toString(T value) {
        return value == null ? "" : name.apply(value);
      }

      @Override
      public T fromString(String typed) {
        throw new UnsupportedOperationException("nothing is typed here");
      }
    };
  }

  /** An axis end, or a setting of an axis such as {@code x.stepsPerMm}. */
  private static String name(String place) {
    return place.contains(".") ? PlaceNames.field("axes." + place) : PlaceNames.endstop(place);
  }

  /** Shown while the practice board is connected. */
  void standing() {
    LinkStatus status = desk.link().status().get();
    boolean on = status.practice() && status.kind() == LinkStatus.Kind.UP;
    show(this, on);
    if (on) {
      parts();
    }
    show(faults.chosen().get());
  }

  private void parts() {
    FaultKind of = kind.getValue();
    List<String> places = of.ofStored() ? settings() : Endstops.fitted(desk.profile());
    fill(first, places, 0);
    fill(second, places, 1);
    show(first, of.places() > 0);
    show(second, of.places() > 1);
    show(numberBox, of.unit().isPresent());
    unit.setText(of.unit().map(key -> key.isEmpty() ? "" : Texts.of(key)).orElse(""));
  }

  private List<String> settings() {
    List<String> found = new ArrayList<>();
    for (String axis : desk.profile().axes().keySet()) {
      for (AxisMotion.Quantity quantity : AxisMotion.Quantity.values()) {
        if (quantity != AxisMotion.Quantity.CURRENT) {
          found.add(axis + "." + quantity.field());
        }
      }
    }
    return found;
  }

  private static void fill(ComboBox<String> box, List<String> places, int usual) {
    if (!box.getItems().equals(places)) {
      box.getItems().setAll(places);
      box.setValue(places.size() > usual ? places.get(usual) : null);
    }
  }

  private void add() {
    FaultKind of = kind.getValue();
    Optional<Double> typed = typed();
    String why = "";
    if (of.unit().isPresent() && typed.isEmpty()) {
      why = Texts.of("faults.noNumber");
    } else if (of.places() > 0 && first.getValue() == null) {
      why = Texts.of("faults.noPlace");
    } else if (of.places() > 1
        && (second.getValue() == null || second.getValue().equals(first.getValue()))) {
      why = Texts.of("faults.noOther");
    } else if (of == FaultKind.SILENCE) {
      faults.silence(typed.orElseThrow());
    } else {
      faults.add(Fault.parse(of.spelled(first.getValue(), second.getValue(), number(typed))));
    }
    trouble.setText(why);
    show(trouble, !why.isEmpty());
    show(faults.chosen().get());
  }

  private static String number(Optional<Double> typed) {
    return typed.map(String::valueOf).orElse("");
  }

  private Optional<Double> typed() {
    try {
      double value = Double.parseDouble(number.getText().replace(',', '.').strip());
      return value > 0 && Double.isFinite(value) ? Optional.of(value) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  private void show(List<Fault> chosen) {
    chips.getChildren().clear();
    for (int i = 0; i < chosen.size(); i++) {
      Fault fault = chosen.get(i);
      String words = FaultKind.words(fault, FaultsPanel::name);
      Button chip =
          Pieces.button(
              "fault-" + i, Texts.of("faults.mend", words), "act-second", () -> mend(fault));
      chips.getChildren().add(chip);
    }
    show(chips, !chosen.isEmpty());
  }

  private void mend(Fault fault) {
    faults.mend(fault);
    show(faults.chosen().get());
  }
}
