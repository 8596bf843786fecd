package dev.gantrywright.ui.names;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** The Describe stage: the part in hand, or the names of the folder where they are in hand. */
public final class DescribeStage extends StackPane implements Subscription {
  private final Node describe;
  private final Supplier<NamesView> making;
  private final Subscription follow;
  private NamesView names;

  /**
   * @param making makes the names' view when it is first looked at
   */
  public DescribeStage(PrinterDesk desk, Node describe, Supplier<NamesView> making) {
    this.describe = describe;
    this.making = making;
    setMinSize(0, 0);
    follow = desk.part().observe(this::show);
  }

  private void show(String part) {
    if (part.equals(PrinterDesk.NAMES) && names == null) {
      names = making.get();
    }
    getChildren().setAll(part.equals(PrinterDesk.NAMES) ? names : describe);
  }

  @Override
  public void close() {
    follow.close();
    if (names != null) {
      names.close();
    }
    if (describe instanceof Subscription closing) {
      closing.close();
    }
  }
}
