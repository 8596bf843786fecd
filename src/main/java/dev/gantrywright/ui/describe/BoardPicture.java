package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.draw.BoardPlan;
import dev.gantrywright.ui.state.BoardWiring;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;

/** The board with what it connects to what. */
final class BoardPicture implements PartPicture {
  private final Supplier<Optional<BoardSheet>> sheet;
  private final BoardPlan plan;

  BoardPicture(Supplier<Optional<BoardSheet>> sheet, Consumer<String> open) {
    this.sheet = sheet;
    this.plan = new BoardPlan(open);
  }

  @Override
  public Region node() {
    return plan;
  }

  @Override
  public double width() {
    return BoardPlan.WIDTH;
  }

  /** Four fields, and the picture of what they choose. */
  @Override
  public boolean below() {
    return true;
  }

  @Override
  public void show(PrinterProfile profile) {
    Optional<BoardSheet> named = sheet.get();
    String said = profile.board().mcu();
    boolean other =
        said != null
            && named.map(BoardSheet::mcu).filter(part -> !part.equalsIgnoreCase(said)).isPresent();
    plan.show(BoardWiring.of(profile, named), other ? said : "");
  }
}
