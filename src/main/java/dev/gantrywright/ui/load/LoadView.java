package dev.gantrywright.ui.load;

import dev.gantrywright.load.Caution;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Loader;
import dev.gantrywright.machine.LoaderMedium;
import dev.gantrywright.ui.draw.LoaderSteps;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.draw.Shrunk;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.LoadState;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Beside;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The Load stage: how this board takes its image, with the cautions of the work. */
public final class LoadView extends SheetScroll implements Subscription {
  /** Width of the cautions beside the buttons. */
  private static final double BESIDE = 430;

  private final PrinterDesk desk;
  private final LoaderSteps steps = new LoaderSteps();
  private final Shrunk picture = new Shrunk(steps, 730);
  private final GridPane facts = new GridPane();
  private final VBox body = new VBox(14);
  private final ImageBox image;
  private final CardCopyBox copyBox;
  private final CommandBox commandBox;
  private final HBox outcome = Pieces.row(8);
  private final VBox work = new VBox(14);
  private final Cautions cautions = new Cautions();
  private final Subscriptions subscriptions = new Subscriptions();
  private boolean taken;

  public LoadView(PrinterDesk desk, LoadDesk load, BuildDesk build) {
    this.desk = desk;
    this.image = new ImageBox(load);
    this.copyBox = new CardCopyBox(load, image);
    this.commandBox = new CommandBox(desk, load, image);
    setFitToHeight(true);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    facts.setHgap(24);
    facts.setVgap(8);
    VBox page =
        new VBox(
            10,
            Pieces.heading(
                Pieces.label(Texts.of("stage.load"), "title"),
                Pieces.label(Texts.of("load.about"), "quiet")),
            body);
    page.getStyleClass().add("form");
    setContent(page);
    subscriptions.add(desk.opened().observe(opened -> show()));
    subscriptions.add(
        desk.values()
            .history()
            .observe(history -> commandBox.told(history.present().build().flash())));
    place(copyBox);
    subscriptions.add(load.state().observe(this::loading));
    subscriptions.add(load.image().observe(image::show));
    subscriptions.add(load.kept().observe(image::kept));
    subscriptions.add(load.drives().observe(copyBox::drives));
    subscriptions.add(build.state().observe(image::built));
    load.look();
  }

  private void show() {
    Optional<Loader> loader = desk.sheet().map(sheet -> sheet.loader());
    body.getChildren().clear();
    if (loader.isEmpty() || loader.get().medium() == null) {
      Button board =
          Pieces.button(
              "load-to-board", Texts.of("load.toBoard"), "act-second", () -> desk.goTo("board"));
      body.getChildren().addAll(Pieces.paragraph(Texts.of("load.none"), "quiet"), board);
      return;
    }
    steps.show(loader.get(), taken);
    facts.getChildren().clear();
    Long offset = loader.get().offset();
    fact(
        0,
        "load.offset",
        offset == null ? "–" : "0x" + Long.toHexString(offset).toUpperCase(Locale.ROOT));
    copyBox.proposeName(loader.get().looksFor());
    LoaderMedium medium = loader.get().medium();
    // The way that this board's loader takes stands first.
    boolean carried = medium == LoaderMedium.CARD || medium == LoaderMedium.UF2;
    cautions.show(
        Caution.before(
            medium == LoaderMedium.CARD
                ? Caution.Act.CARD
                : medium == LoaderMedium.UF2 ? Caution.Act.USB_DRIVE : Caution.Act.COMMAND));
    work.getChildren().setAll(picture, image);
    if (!desk.notes().isEmpty()) {
      work.getChildren().add(Pieces.paragraph(Texts.of("load.checkFirst"), "quiet"));
    }
    work.getChildren()
        .addAll(carried ? new Node[] {copyBox, commandBox} : new Node[] {commandBox, copyBox});
    Beside both = new Beside(BESIDE, 28);
    both.put(work, new VBox(14, facts, cautions));
    body.getChildren().add(both);
  }

  private void fact(int row, String key, String value) {
    facts.addRow(row, Pieces.label(Texts.of(key), "field-label"), Pieces.label(value, "strong"));
  }

  private void loading(LoadState state) {
    boolean now = state.kind() == LoadState.Kind.LOADED;
    if (taken != now) {
      taken = now;
      desk.sheet()
          .map(BoardSheet::loader)
          .filter(loader -> loader.medium() != null)
          .ifPresent(loader -> steps.show(loader, taken));
    }
    copyBox.show(state);
    commandBox.show(state);
    Mark mark =
        switch (state.kind()) {
          case COPIED, FLASHED, LOADED -> Mark.SETTLED;
          case FAILED -> Mark.ERROR;
          case UNSURE -> Mark.WARNING;
          default -> Mark.OPEN;
        };
    outcome.getChildren().setAll(mark.sign(12), Pieces.paragraph(state.words()));
    Inputs.show(outcome, state.kind() != LoadState.Kind.IDLE);
    if (state.busy()) {
      VBox at = state.kind() == LoadState.Kind.FLASHING ? commandBox : copyBox;
      place(at);
    }
  }

  /** What a load came to stands under the button that began it. */
  private void place(VBox box) {
    copyBox.getChildren().remove(outcome);
    commandBox.getChildren().remove(outcome);
    int under = box == copyBox ? CardCopyBox.UNDER : CommandBox.UNDER;
    box.getChildren().add(under, outcome);
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
