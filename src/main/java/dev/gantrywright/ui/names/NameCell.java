package dev.gantrywright.ui.names;

import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Locale;
import javafx.beans.value.ObservableDoubleValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** One field in the list: how it stands, its macro, the line, the confidence. */
final class NameCell extends ListCell<NameRow> {
  static final double HEIGHT = 30;

  /** Below this width of the list the line gives its room to the macro. */
  private static final double NARROW = 430;

  private final HBox sign = new HBox();
  private final Label field = Pieces.label("");
  private final Label macro = Pieces.label("", "mono", "code");
  private final Label without = Pieces.label("", "quiet", "small");
  private final Label place = Pieces.label("", "quiet", "small");
  private final Label percent = Pieces.label("", "small");
  private final Label mine = Pieces.label("", "quiet", "small");
  private final HBox row;

  /**
   * @param width of the list
   */
  NameCell(ObservableDoubleValue width) {
    sign.setMinWidth(14);
    sign.setAlignment(Pos.CENTER);
    field.setMinWidth(0);
    field.setPrefWidth(190);
    for (Label label : new Label[] {macro, without}) {
      label.setMinWidth(0);
      label.setMaxWidth(Double.MAX_VALUE);
      label.setPrefWidth(120);
      HBox.setHgrow(label, Priority.ALWAYS);
    }
    place.setMinWidth(104);
    place.setPrefWidth(108);
    place.setTextOverrun(javafx.scene.control.OverrunStyle.LEADING_ELLIPSIS);
    for (Label label : new Label[] {percent, mine}) {
      label.setMinWidth(58);
      label.setPrefWidth(58);
    }
    row = Pieces.row(10, sign, field, macro, without, place, percent, mine);
    row.setMinWidth(0);
    row.setPrefWidth(1);
    width.addListener((o, before, now) -> fit(now.doubleValue()));
    fit(width.get());
    getStyleClass().add("diff-cell");
  }

  private void fit(double width) {
    place.setVisible(width >= NARROW);
    place.setManaged(width >= NARROW);
    field.setPrefWidth(Math.min(230, Math.max(104, width * 0.27)));
  }

  @Override
  protected void updateItem(NameRow name, boolean empty) {
    super.updateItem(name, empty);
    setText(null);
    setGraphic(empty ? null : row);
    if (empty) {
      setAccessibleText(null);
      return;
    }
    sign.getChildren().setAll(sign(name.standing()));
    field.setText(name.label());
    String standing = Texts.of("names.standing." + name.standing().name().toLowerCase(Locale.ROOT));
    boolean named = !name.macro().isEmpty();
    boolean settled = named && name.entry().byUser();
    show(macro, named, name.macro());
    show(without, !named, standing);
    place.setText(name.place());
    show(percent, !settled, name.percent());
    show(mine, settled, standing);
    setAccessibleText(
        name.label()
            + ": "
            + (named ? name.macro() + ", " + standing + ", " : "")
            + (named ? name.percent() : standing));
  }

  /** Styles stay as they are, so that a row is toned in the frame in which it is drawn. */
  private static void show(Label label, boolean shown, String words) {
    label.setText(shown ? words : "");
    label.setVisible(shown);
    label.setManaged(shown);
  }

  private static Node sign(NameRow.Standing standing) {
    return switch (standing) {
      case ASKS -> Mark.WARNING.sign(12);
      case LEARNED, ACCEPTED, CHOSEN -> Mark.SETTLED.sign(12);
      case NONE, NOT_FOUND -> Mark.OPEN.sign(12);
    };
  }
}
