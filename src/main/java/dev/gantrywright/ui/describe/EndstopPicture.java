package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.Endstop;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.draw.EndstopCircuit;
import dev.gantrywright.ui.state.Texts;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;

/** An endstop's circuit, which can be touched. */
final class EndstopPicture implements PartPicture {
  private final String name;
  private final EndstopCircuit circuit = new EndstopCircuit();
  private Endstop endstop;
  private boolean touched;

  EndstopPicture(String name) {
    this.name = name;
    circuit.setFocusTraversable(true);
    circuit.getStyleClass().add("touchable");
    circuit.setAccessibleHelp(Texts.of("circuit.help"));
    Tooltip.install(circuit, new Tooltip(Texts.of("circuit.help")));
    circuit.setOnMousePressed(press -> draw(true));
    circuit.setOnMouseReleased(release -> draw(false));
    circuit.setOnKeyPressed(
        key -> {
          if (key.getCode() == KeyCode.SPACE) {
            draw(!touched);
            key.consume();
          }
        });
  }

  private void draw(boolean now) {
    touched = now;
    circuit.show(endstop, touched);
  }

  @Override
  public Region node() {
    return circuit;
  }

  @Override
  public double width() {
    return 536;
  }

  @Override
  public void show(PrinterProfile profile) {
    Endstop next = profile.endstops().get(name);
    boolean fitted = next != null && !Boolean.FALSE.equals(next.fitted());
    circuit.setVisible(fitted);
    circuit.setManaged(fitted);
    if (fitted && !next.equals(endstop)) {
      endstop = next;
      draw(touched);
    }
  }
}
