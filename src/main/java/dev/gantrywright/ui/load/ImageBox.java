package dev.gantrywright.ui.load;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.ChosenImage;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.quantity.HomePath;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.BuildState;
import dev.gantrywright.ui.state.JudgedFile;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The image to load: which file, what the judge says of it, and those that one can go back to. */
final class ImageBox extends VBox {
  private static final int MOST_KEPT = 4;

  private final LoadDesk load;
  private final TextField image = Inputs.field("load-image", "load.image");
  private final TextField reason = Inputs.field("load-reason", "load.reason");
  private final VBox remarks = new VBox(6);
  private final HBox reasonRow;
  private final FlowPane earlier = new FlowPane(8, 6);

  ImageBox(LoadDesk load) {
    super(8);
    this.load = load;
    image.setOnAction(enter -> choose());
    image
        .focusedProperty()
        .addListener(
            (was, before, focused) -> {
              if (!focused) {
                choose();
              }
            });
    image.setPromptText(Texts.of("load.image.prompt"));
    reason.setPromptText(Texts.of("load.reason.prompt"));
    reasonRow = Inputs.row("load.reason", reason);
    Inputs.show(reasonRow, false);
    getChildren().addAll(Inputs.row("load.image", image), remarks, reasonRow, earlier);
  }

  private void choose() {
    Inputs.path(image)
        .filter(path -> !path.equals(load.image().get().file()))
        .ifPresent(load::choose);
  }

  /** Takes what stands in the field before a load begins. */
  void settle() {
    choose();
  }

  /** Why a refused image is loaded all the same. */
  String reason() {
    return reasonRow.isVisible() ? reason.getText().strip() : "";
  }

  /** The image that was built last, unless the user has chosen another. */
  void built(BuildState state) {
    state
        .done()
        .flatMap(done -> done.build().artefact())
        .filter(artefact -> state.done().flatMap(BuildJob.Done::image).isPresent())
        .ifPresent(load::choose);
  }

  void show(JudgedFile file) {
    if (file.file() != null && !image.isFocused()) {
      image.setText(HomePath.shown(file.file()));
    }
    remarks.getChildren().clear();
    if (file.file() != null && file.image().isEmpty()) {
      boolean reading = file.problem().isEmpty();
      remarks
          .getChildren()
          .add(
              row(
                  reading ? Mark.OPEN : Mark.ERROR,
                  reading ? Texts.of("load.reading") : file.problem()));
    }
    file.image().ifPresent(this::judged);
    Inputs.show(reasonRow, file.refused());
  }

  private void judged(ChosenImage chosen) {
    String size = Shown.grouped(chosen.bytes().length);
    String hash = chosen.image().sha256().substring(0, 12);
    String format = chosen.image().format().words();
    if (chosen.verdict().isEmpty()) {
      remarks.getChildren().add(row(Mark.NOTE, Texts.of("load.notJudged", format, size, hash)));
      return;
    }
    Verdict verdict = chosen.verdict().get();
    remarks
        .getChildren()
        .add(
            row(
                verdict.refused() ? Mark.ERROR : Mark.SETTLED,
                Texts.of(
                    verdict.refused() ? "load.judgedWrong" : "load.judgedFine",
                    format,
                    size,
                    hash)));
    verdict
        .remarks()
        .forEach(
            remark ->
                remarks
                    .getChildren()
                    .add(
                        row(
                            Mark.valueOf(remark.level().name()),
                            remark.text() + " " + remark.todo())));
  }

  private static Node row(Mark mark, String words) {
    return Pieces.row(8, mark.sign(12), Pieces.paragraph(words, "small"));
  }

  /** The images that were replaced on this board's cards. */
  void kept(List<Path> images) {
    earlier.getChildren().clear();
    if (!images.isEmpty()) {
      earlier.getChildren().add(Pieces.label(Texts.of("load.kept"), "quiet"));
    }
    for (Path kept : images.stream().limit(MOST_KEPT).toList()) {
      earlier
          .getChildren()
          .add(
              Pieces.button(
                  "load-kept", kept.getFileName().toString(), "plain", () -> load.choose(kept)));
    }
    Inputs.show(earlier, !images.isEmpty());
  }
}
