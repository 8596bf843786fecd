package dev.gantrywright.ui.start;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.draw.Mark;
import dev.gantrywright.ui.draw.SmallPlan;
import dev.gantrywright.ui.quantity.HomePath;
import dev.gantrywright.ui.state.MarginNotes;
import dev.gantrywright.ui.state.PrinterCard;
import dev.gantrywright.ui.state.PrinterPast;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One printer on the start page: its plan in small, what it is, what is open. */
final class PrinterRow extends HBox {
  /** As wide as a plan, so that an unreadable printer's words stand in the same column. */
  private static final double PICTURE = 112;

  /** One width for every row, so that the states stand in one column. */
  /** Room for the longest state, so that those of all printers stand in one column. */
  private static final double STATE = 288;

  /** Below this width the state stands under the words, and the picture gives way. */
  private static final double NARROW = 840;

  private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM HH:mm");

  private final CheckBox chosen = new CheckBox();
  private final Region picture;
  private final VBox words;
  private final VBox state;

  /** What can be done with a printer. */
  record Acts(Consumer<PrinterCard> open, Consumer<PrinterCard> duplicate, Runnable chosen) {}

  PrinterRow(PrinterCard card, Acts acts) {
    super(20);
    getStyleClass().add("printer-row");
    chosen.setAccessibleText(Texts.of("start.choose", card.title()));
    chosen.setOnAction(click -> acts.chosen().run());
    Button open =
        Pieces.button(
            "open-" + card.file().getFileName().toString().replaceAll("\\W", "-"),
            Texts.of("start.open"),
            "act",
            () -> acts.open().accept(card));
    open.setAccessibleText(Texts.of("start.open.words", card.title()));
    Button copy =
        Pieces.button(
            "copy", Texts.of("start.duplicate"), "plain", () -> acts.duplicate().accept(card));
    copy.setAccessibleText(Texts.of("start.duplicate.words", card.title()));
    boolean readable = card.profile().isPresent();
    copy.setVisible(readable);
    open.setVisible(readable);
    chosen.setVisible(readable);
    picture = picture(card);
    words = words(card);
    state = state(card);
    getChildren().addAll(chosen, picture, words, state, copy, open);
    HBox.setHgrow(words, Priority.ALWAYS);
    widthProperty().addListener((o, before, now) -> fit(now.doubleValue() < NARROW));
    setOnMouseClicked(
        click -> {
          if (click.getClickCount() == 2 && readable) {
            acts.open().accept(card);
          }
        });
  }

  private void fit(boolean narrow) {
    boolean now = state.getParent() != this;
    if (narrow && !now) {
      getChildren().remove(state);
      words.getChildren().add(state);
    } else if (now && !narrow) {
      words.getChildren().remove(state);
      getChildren().add(getChildren().indexOf(words) + 1, state);
    }
    state.setMinWidth(narrow ? 0 : STATE);
    picture.setVisible(!narrow);
    picture.setManaged(!narrow);
  }

  boolean chosen() {
    return chosen.isSelected();
  }

  private static Region picture(PrinterCard card) {
    if (card.profile().isEmpty()) {
      Region none = new Region();
      none.setMinWidth(PICTURE);
      return none;
    }
    SmallPlan plan = new SmallPlan(card.profile().get());
    plan.setMouseTransparent(true);
    plan.setAccessibleText(Texts.of("plan.title"));
    return plan;
  }

  private static VBox words(PrinterCard card) {
    VBox box = new VBox(4, Pieces.paragraph(card.title(), "section"));
    box.setMinWidth(160);
    if (card.profile().isEmpty()) {
      box.getChildren()
          .addAll(
              Pieces.paragraph(card.problem(), "error-text", "small"),
              Pieces.paragraph(Texts.of("start.mend"), "quiet", "small"));
      return box;
    }
    PrinterProfile profile = card.profile().get();
    String kind = profile.kinematics() == null ? "" : profile.kinematics().word();
    String mcu = profile.board().mcu() == null ? "" : profile.board().mcu();
    box.getChildren().add(Pieces.paragraph(join(card.board(), mcu, kind), "quiet"));
    String notes = profile.notes() == null ? HomePath.shown(card.file()) : profile.notes();
    box.getChildren().add(Pieces.paragraph(notes, "quiet", "small"));
    return box;
  }

  private static String join(String... words) {
    StringBuilder all = new StringBuilder();
    for (String word : words) {
      if (!word.isEmpty()) {
        all.append(all.isEmpty() ? "" : " · ").append(word);
      }
    }
    return all.toString();
  }

  private static VBox state(PrinterCard card) {
    VBox box = new VBox(4);
    box.setAlignment(Pos.CENTER_LEFT);
    box.setMinWidth(STATE);
    box.setPrefWidth(STATE);
    if (card.profile().isEmpty()) {
      box.getChildren()
          .add(Pieces.row(8, Mark.ERROR.sign(12), Pieces.label(Texts.of("start.unreadable"))));
      return box;
    }
    box.getChildren()
        .addAll(
            card.notes().isEmpty()
                ? Pieces.row(8, Mark.SETTLED.sign(12), Pieces.label(Texts.of("route.fits")))
                : Pieces.row(
                    8,
                    Mark.of(card.notes().get(0).gravity()).sign(12),
                    Pieces.label(MarginNotes.counted(card.notes()))),
            past(card.past().build(), "build"),
            past(card.past().proof(), "proof"));
    return box;
  }

  /** When it was last built or proven, and whether that came out well. */
  private static HBox past(Optional<PrinterPast.Done> done, String key) {
    Mark mark = done.map(d -> d.well() ? Mark.SETTLED : Mark.ERROR).orElse(Mark.OPEN);
    String words =
        done.map(
                d ->
                    Texts.of(
                        "start." + key + (d.well() ? ".well" : ".failed"),
                        WHEN.format(d.time().atZone(ZoneId.systemDefault()))))
            .orElseGet(() -> Texts.of("start." + key + ".never"));
    boolean practice = done.map(PrinterPast.Done::practice).orElse(false);
    return Pieces.row(
        8,
        mark.sign(12),
        Pieces.label(practice ? Texts.of("start.practice", words) : words, "quiet", "small"));
  }
}
