package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.ui.draw.Shrunk;
import dev.gantrywright.ui.quantity.TypedNumber;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.Part;
import dev.gantrywright.ui.state.ProfileDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import tools.jackson.databind.JsonNode;

/** The fields of one part of the machine. */
final class PartForm extends VBox {
  private final Part part;
  private final ProfileDesk desk;
  private final Map<String, FieldRow> rows = new LinkedHashMap<>();
  private final List<Part.Row> conditional = new ArrayList<>();
  private final PartPicture picture;
  private final Label subtitle = new Label();
  private final KnownHeights heights = new KnownHeights();

  PartForm(
      Part part,
      ProfileDesk desk,
      TypedNumber typed,
      Pickers pickers,
      Supplier<Optional<BoardSheet>> sheet,
      Consumer<String> open) {
    this.part = part;
    this.desk = desk;
    getStyleClass().add("form");
    Label title = new Label(part.title());
    title.getStyleClass().add("title");
    subtitle.getStyleClass().add("quiet");
    HBox heading = Pieces.heading(title, subtitle);
    heading.setPadding(new javafx.geometry.Insets(0, 0, 8, 0));
    getChildren().add(heading);
    picture = PartPicture.of(part.id(), sheet, open);
    if (picture != null && !picture.below()) {
      getChildren().add(new Shrunk(picture.node(), picture.width()));
    }
    for (Part.Group group : part.groups()) {
      group(group, typed, pickers);
    }
    if (picture != null && picture.below()) {
      Shrunk held = new Shrunk(picture.node(), picture.width());
      VBox.setMargin(held, new javafx.geometry.Insets(16, 0, 0, 0));
      getChildren().add(held);
    }
    refresh();
  }

  @Override
  public void requestLayout() {
    // Called by the constructor above this one, too.
    if (heights != null) {
      heights.forget();
    }
    super.requestLayout();
  }

  @Override
  protected double computeMinHeight(double width) {
    return heights.least(width, super::computeMinHeight);
  }

  @Override
  protected double computePrefHeight(double width) {
    return heights.preferred(width, super::computePrefHeight);
  }

  private void group(Part.Group group, TypedNumber typed, Pickers pickers) {
    if (!group.title().isEmpty()) {
      Label title = new Label(Texts.of("group." + group.title()));
      title.getStyleClass().add("group-title");
      getChildren().add(title);
    }
    for (Part.Row row : group.rows()) {
      FieldRow shown =
          new FieldRow(
              row.path(),
              Fields.at(row.path()).orElseThrow(),
              desk,
              typed,
              pickers.choices(row.path()));
      rows.put(row.path(), shown);
      getChildren().add(shown);
      if (!row.whenPath().isEmpty()) {
        conditional.add(row);
      }
    }
  }

  /** Takes all values from the document. */
  void refresh() {
    rows.values().forEach(FieldRow::show);
    for (Part.Row row : conditional) {
      boolean applies =
          desk.value(row.path()).isPresent()
              || desk.value(row.whenPath())
                  .map(JsonNode::asString)
                  .filter(row.whenValue()::equals)
                  .isPresent();
      FieldRow shown = rows.get(row.path());
      shown.setVisible(applies);
      shown.setManaged(applies);
    }
    if (picture != null) {
      picture.show(desk.profile());
    }
    subtitle.setText(PartSubtitle.of(desk.profile(), part.id()));
  }

  /** Marks the fields that notes speak of. */
  void mark(List<MarginNote> notes) {
    Map<String, Gravity> gravest = new LinkedHashMap<>();
    for (MarginNote note : notes) {
      gravest.merge(note.path(), note.gravity(), (a, b) -> a.atLeast(b) ? a : b);
    }
    rows.forEach((path, row) -> row.mark(gravest.get(path)));
  }

  /** The control of a field; of the first field where the path is the whole part. */
  Region box(String path) {
    FieldRow row = rows.get(path);
    if (row == null && (path.equals(part.id()) || path.startsWith(part.id()))) {
      row =
          rows.values().stream()
              .filter(each -> each.path().startsWith(path))
              .findFirst()
              .orElse(null);
    }
    return row == null || !row.isVisible() ? null : row.box();
  }

  Part part() {
    return part;
  }

  Map<String, FieldRow> rows() {
    return rows;
  }
}
