package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.draw.EndstopCircuit;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** An endstop's circuit, which can be touched. */
final class EndstopPicture implements PartPicture {
  private final String name;
  private final EndstopCircuit circuit = new EndstopCircuit();
  private final ToggleButton rest = new ToggleButton(Texts.of("circuit.rest"));
  private final ToggleButton touch = new ToggleButton(Texts.of("circuit.touched"));
  private final VBox box = new VBox(6);
  private Endstop endstop;

  EndstopPicture(String name) {
    this.name = name;
    HBox switchBar = new HBox(rest, touch);
    switchBar.getStyleClass().add("choice");
    switchBar.setMaxWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
    rest.setOnAction(click -> draw(false));
    touch.setOnAction(click -> draw(true));
    circuit.setOnMousePressed(press -> draw(true));
    circuit.setOnMouseReleased(release -> draw(false));
    box.getChildren().addAll(circuit, switchBar);
    box.setPadding(new javafx.geometry.Insets(0, 0, 8, 0));
  }

  private void draw(boolean touched) {
    rest.setSelected(!touched);
    touch.setSelected(touched);
    circuit.show(endstop, touched);
  }

  @Override
  public Node node() {
    return box;
  }

  @Override
  public void show(PrinterProfile profile) {
    Endstop next = profile.endstops().get(name);
    boolean fitted = next != null && !Boolean.FALSE.equals(next.fitted());
    box.setVisible(fitted);
    box.setManaged(fitted);
    if (fitted && !next.equals(endstop)) {
      endstop = next;
      draw(touch.isSelected());
    }
  }
}
