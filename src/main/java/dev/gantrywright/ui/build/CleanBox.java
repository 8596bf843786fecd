package dev.gantrywright.ui.build;

import dev.gantrywright.build.Cleaning;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.VBox;

/** The clean step: says what it would delete, and deletes it only when asked again. */
final class CleanBox extends VBox {
  private static final int NAMED = 8;

  private final BuildDesk build;

  CleanBox(BuildDesk build) {
    super(6);
    this.build = build;
    show(Optional.empty());
  }

  void show(Optional<Cleaning> cleaning) {
    getChildren().clear();
    setVisible(cleaning.isPresent());
    setManaged(cleaning.isPresent());
    cleaning.ifPresent(this::ask);
  }

  private void ask(Cleaning plan) {
    List<Path> files = plan.files();
    if (files.isEmpty()) {
      getChildren()
          .add(
              Pieces.row(8, Mark.SETTLED.sign(12), Pieces.label(Texts.of("build.nothingToClean"))));
      return;
    }
    StringBuilder names = new StringBuilder();
    files.stream().limit(NAMED).forEach(f -> names.append(f).append("  "));
    if (files.size() > NAMED) {
      names.append(Texts.of("build.cleanMore", files.size() - NAMED));
    }
    getChildren()
        .addAll(
            Pieces.row(
                8,
                Mark.NOTE.sign(12),
                Pieces.paragraph(
                    Texts.of(
                        "build.cleanAsk", files.size(), Shown.grouped(plan.bytes()), plan.folder()),
                    "small")),
            Pieces.paragraph(names.toString().strip(), "mono", "small"),
            Pieces.row(
                10,
                Pieces.button(
                    "clean-delete", Texts.of("build.cleanDelete"), "act-second", build::clean),
                Pieces.button("clean-keep", Texts.of("build.cleanKeep"), "plain", build::keepAll)));
  }
}
