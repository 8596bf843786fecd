package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.Supply;
import dev.gantrywright.ui.draw.HeaterCircuit;
import dev.gantrywright.ui.state.HeaterFigures;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A heater's circuit, with the caution for whoever is about to touch it. */
final class HeaterPicture implements PartPicture {
  private static final double WIDTH = 536;

  private final String name;
  private final Supplier<Optional<BoardSheet>> sheet;
  private final HeaterCircuit circuit = new HeaterCircuit();
  private final VBox node;
  private Heater heater;
  private Supply supply;
  private Optional<BoardSheet> board = Optional.empty();

  HeaterPicture(String name, Supplier<Optional<BoardSheet>> sheet) {
    this.name = name;
    this.sheet = sheet;
    Label words = Pieces.paragraph(Texts.of("heater.circuit.caution"), "small", "caution-text");
    HBox.setHgrow(words, Priority.ALWAYS);
    Label signal = Pieces.label(Texts.of("prove.warning"), "caution-word");
    signal.setMinWidth(Region.USE_PREF_SIZE);
    node = new VBox(8, circuit, Pieces.row(10, signal, words));
  }

  @Override
  public Region node() {
    return node;
  }

  @Override
  public double width() {
    return WIDTH;
  }

  @Override
  public void show(PrinterProfile profile) {
    Heater next = profile.heaters().get(name);
    node.setVisible(next != null);
    node.setManaged(next != null);
    Optional<BoardSheet> named = sheet.get();
    boolean same =
        next != null
            && next.equals(heater)
            && profile.supply().equals(supply)
            && named.equals(board);
    if (next != null && !same) {
      heater = next;
      supply = profile.supply();
      board = named;
      circuit.show(next, HeaterFigures.of(next, supply, named), named);
    }
  }
}
