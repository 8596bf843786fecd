package dev.gantrywright.ui.describe;

import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.ui.quantity.TypedNumber;
import dev.gantrywright.ui.quantity.Units;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.Part;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.theme.SheetScroll;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import tools.jackson.databind.JsonNode;

/** The Describe stage: the part in hand with its notes in the margin. */
public final class DescribeView extends SheetScroll implements Subscription {
  private final PrinterDesk desk;
  private final TypedNumber typed = new TypedNumber(Units.shipped());
  private final Subscriptions subscriptions = new Subscriptions();
  private final Pickers pickers;
  private final ChangeListener<Node> focusFollower = (o, before, now) -> help(now);
  private PartForm form;
  private MarginSheet sheet;
  private boolean stale;

  public DescribeView(PrinterDesk desk, Pickers pickers) {
    this.desk = desk;
    this.pickers = pickers;
    setFitToHeight(true);
    // Its stage is as large as the room; to measure the whole form for that would take long.
    setPrefSize(0, 0);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    sceneProperty().addListener((o, before, now) -> follow(before, now));
    subscriptions.add(desk.part().observe(id -> open()));
    subscriptions.add(desk.values().history().listen(history -> refresh()));
    subscriptions.add(desk.opened().listen(opened -> refresh()));
    subscriptions.add(desk.judged().listen(judged -> showNotes()));
    subscriptions.add(desk.focus().observe(this::focus));
  }

  private void open() {
    Optional<Part> part = desk.partInHand();
    if (part.isEmpty()) {
      desk.part().set("printer");
      return;
    }
    form = new PartForm(part.get(), desk.values(), typed, pickers, desk::sheet, desk::goTo);
    sheet =
        new MarginSheet(
            form,
            form::box,
            new NoteCard.Acts(
                desk::apply,
                note -> sheet.requestLayout(),
                note -> desk.page().set(Optional.of(note))));
    setContent(sheet);
    setVvalue(0);
    showNotes();
  }

  private void follow(Scene before, Scene now) {
    if (before != null) {
      before.focusOwnerProperty().removeListener(focusFollower);
    }
    if (now != null) {
      now.focusOwnerProperty().addListener(focusFollower);
      if (stale) {
        refresh();
        showNotes();
      }
    }
  }

  /** Help stands beside the field that has the keyboard, until another one takes it. */
  private void help(Node owner) {
    for (Node node = owner; node != null; node = node.getParent()) {
      if (node instanceof FieldRow row) {
        sheet.help(row, pickers.toMind(row.path(), value(row.path())));
        reveal(row);
        return;
      }
    }
  }

  private String value(String path) {
    return ProfileValues.get(desk.profile(), path).map(JsonNode::asString).orElse("");
  }

  /** Scrolls no further than it takes to see the whole row that has the keyboard. */
  private void reveal(FieldRow row) {
    double view = getViewportBounds().getHeight();
    double hidden = sheet.getHeight() - view;
    if (hidden <= 0) {
      return;
    }
    Bounds at = sheet.sceneToLocal(row.localToScene(row.getLayoutBounds()));
    double top = getVvalue() * hidden;
    double wanted = Math.max(Math.min(top, at.getMinY()), at.getMaxY() - view);
    setVvalue(Math.max(0, Math.min(1, wanted / hidden)));
  }

  /** Out of sight nothing is laid out; it catches up when it is looked at. */
  private boolean outOfSight() {
    stale = getScene() == null;
    return stale;
  }

  private void refresh() {
    if (outOfSight()) {
      return;
    }
    if (desk.partInHand().map(form.part()::equals).orElse(false)) {
      form.refresh();
      sheet.requestLayout();
    } else {
      open();
    }
  }

  private void showNotes() {
    if (outOfSight()) {
      return;
    }
    List<MarginNote> here = desk.notes().stream().filter(this::belongsHere).toList();
    form.mark(here);
    sheet.show(here);
  }

  private boolean belongsHere(MarginNote note) {
    return form.part().holds(note.path()) || form.part().id().equals(note.path());
  }

  private void focus(Optional<String> path) {
    path.ifPresent(
        wanted -> {
          desk.focus().set(Optional.empty());
          FieldRow row = form.rows().get(wanted);
          if (row != null) {
            row.takeFocus();
            scrollTo(row);
          }
        });
  }

  private void scrollTo(FieldRow row) {
    double content = sheet.prefHeight(getWidth());
    double view = getViewportBounds().getHeight();
    if (content > view) {
      double y = row.getBoundsInParent().getMinY() - view / 2;
      setVvalue(Math.max(0, Math.min(1, y / (content - view))));
    }
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
