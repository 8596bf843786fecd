package dev.gantrywright.ui.build;

import dev.gantrywright.build.BuildHistory;
import dev.gantrywright.build.BuildResult;
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
    boolean built = build.outcome() == BuildResult.Outcome.BUILT;
    String key = "build.ended." + build.outcome().name().toLowerCase(Locale.ROOT);
    getChildren()
        .add(
            Pieces.row(
                8,
                (built ? Mark.SETTLED : Mark.OPEN).sign(11),
                Pieces.label(WHEN.format(build.started()), "mono", "small"),
                Pieces.label(
                    Texts.of(
                        key, build.took().toMillis() / 1000.0, build.errors(), build.warnings()),
                    "small")));
  }
}
