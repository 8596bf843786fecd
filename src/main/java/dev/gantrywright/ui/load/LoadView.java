package dev.gantrywright.ui.load;

import dev.gantrywright.machine.Loader;
import dev.gantrywright.machine.LoaderMedium;
import dev.gantrywright.ui.draw.LoaderSteps;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The Load stage: how this board takes its image, with the cautions of the work. */
public final class LoadView extends ScrollPane implements Subscription {
  private final PrinterDesk desk;
  private final LoaderSteps steps = new LoaderSteps();
  private final GridPane facts = new GridPane();
  private final VBox body = new VBox(14);
  private final CardCopyBox copyBox;
  private final Subscriptions subscriptions = new Subscriptions();

  public LoadView(PrinterDesk desk, LoadDesk load, BuildDesk build) {
    this.desk = desk;
    this.copyBox = new CardCopyBox(load, build);
    getStyleClass().add("sheet-scroll");
    setFitToWidth(true);
    setFitToHeight(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    setFocusTraversable(false);
    facts.setHgap(24);
    facts.setVgap(8);
    VBox page =
        new VBox(
            10,
            Pieces.row(
                20,
                Pieces.label(Texts.of("stage.load"), "title"),
                Pieces.label(Texts.of("load.about"), "quiet")),
            body);
    page.getStyleClass().add("form");
    setContent(page);
    subscriptions.add(desk.opened().observe(opened -> show()));
    subscriptions.add(load.state().observe(copyBox::show));
    subscriptions.add(load.drives().observe(copyBox::drives));
    subscriptions.add(build.state().observe(copyBox::built));
    load.look();
  }

  private void show() {
    Optional<Loader> loader = desk.sheet().map(sheet -> sheet.loader());
    body.getChildren().clear();
    if (loader.isEmpty() || loader.get().medium() == null) {
      body.getChildren().add(Pieces.paragraph(Texts.of("load.none"), "quiet"));
      return;
    }
    steps.show(loader.get());
    facts.getChildren().clear();
    fact(0, "load.medium", Texts.of("load.medium." + loader.get().medium().word()));
    Long offset = loader.get().offset();
    fact(
        1,
        "load.offset",
        offset == null ? "–" : "0x" + Long.toHexString(offset).toUpperCase(Locale.ROOT));
    fact(
        2,
        "load.sign",
        loader.get().success() == null
            ? "–"
            : Texts.of("load.sign." + loader.get().success().word(), or(loader.get().renamedTo())));
    copyBox.proposeName(loader.get().looksFor());
    body.getChildren().addAll(steps, facts, cautions(loader.get().medium()), copyBox);
    if (!desk.remarks().isEmpty()) {
      body.getChildren().add(Pieces.paragraph(Texts.of("load.checkFirst"), "quiet"));
    }
  }

  private void fact(int row, String key, String value) {
    facts.addRow(row, Pieces.label(Texts.of(key), "field-label"), Pieces.label(value, "strong"));
  }

  private static String or(String text) {
    return text == null ? "–" : text;
  }

  private static VBox cautions(LoaderMedium medium) {
    VBox box = new VBox(6);
    box.getChildren()
        .addAll(
            Pieces.row(
                10,
                Pieces.label(Texts.of("load.word"), "caution-word"),
                Pieces.paragraph(Texts.of("load.caution"), "small")));
    if (medium == LoaderMedium.CARD) {
      box.getChildren()
          .add(
              Pieces.row(
                  10,
                  Pieces.label(Texts.of("load.notice"), "caution-word"),
                  Pieces.paragraph(Texts.of("load.notice.card"), "small")));
    }
    return box;
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
