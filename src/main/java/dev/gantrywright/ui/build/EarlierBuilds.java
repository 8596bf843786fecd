package dev.gantrywright.ui.build;

import dev.gantrywright.build.BuildHistory;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import javafx.scene.layout.VBox;

/** The last builds of this printer, a line each. */
final class EarlierBuilds extends VBox {
  private static final int MOST = 5;
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH)
          .withZone(ZoneId.systemDefault());

  EarlierBuilds() {
    super(4);
  }

  void show(List<BuildHistory.Entry> builds) {
    getChildren().clear();
    setVisible(!builds.isEmpty());
    setManaged(!builds.isEmpty());
    if (builds.isEmpty()) {
      return;
    }
    getChildren().add(Pieces.label(Texts.of("build.earlier"), "quiet"));
    builds.stream().limit(MOST).forEach(this::add);
  }

  private void add(BuildHistory.Entry build) {
    Mark mark =
        switch (build.outcome()) {
          case BUILT -> Mark.SETTLED;
          case CANCELLED -> Mark.OPEN;
          default -> Mark.ERROR;
        };
    String key = "build.ended." + build.outcome().name().toLowerCase(Locale.ROOT);
    getChildren()
        .add(
            Pieces.row(
                8,
                mark.sign(11),
                Pieces.label(WHEN.format(build.started()), "quiet", "small"),
                Pieces.label(
                    Texts.of(
                        key, build.took().toMillis() / 1000.0, build.errors(), build.warnings()),
                    "small")));
  }
}
