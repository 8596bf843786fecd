package dev.gantrywright.ui.prove;

import dev.gantrywright.prove.Stretch;
import dev.gantrywright.ui.draw.TraceStrips;
import dev.gantrywright.ui.state.TraceLook;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;

/** Keys, pointer and wheel in the picture of the trace. */
final class TraceHands {
  /** One press of an arrow is this part of the picture. */
  private static final int STEPS = 50;

  /** A wheel turned by one notch. */
  private static final double NOTCH = 40;

  private static final double NOWHERE = -1;

  private final TraceStrips strips;
  private final TraceLook look;
  private final Runnable mark;
  private final Runnable pointed;
  private double pressedX;
  private long pressedRight;
  private double turned;
  private boolean over;

  /**
   * @param mark puts a mark
   * @param pointed told when another moment is read
   */
  TraceHands(TraceStrips strips, TraceLook look, Runnable mark, Runnable pointed) {
    this.strips = strips;
    this.look = look;
    this.mark = mark;
    this.pointed = pointed;
    strips.addEventHandler(KeyEvent.KEY_PRESSED, this::keyed);
    strips.setOnMouseMoved(this::moved);
    strips.setOnMouseExited(this::left);
    strips.setOnMousePressed(this::pressed);
    strips.setOnMouseDragged(this::dragged);
    strips.setOnMouseClicked(this::clicked);
    strips.setOnScroll(this::turned);
  }

  private void keyed(KeyEvent key) {
    boolean done = key.isShortcutDown() ? jumped(key) : stepped(key);
    if (done) {
      key.consume();
    }
  }

  private boolean stepped(KeyEvent key) {
    switch (key.getCode()) {
      case SPACE -> look.holdOrGoOn();
      case LEFT -> look.point(cursor() - look.spanNanos() / STEPS);
      case RIGHT -> look.point(cursor() + look.spanNanos() / STEPS);
      case PAGE_UP -> page(-1);
      case PAGE_DOWN -> page(1);
      case HOME -> look.point(look.all().first());
      case END -> look.point(Long.MAX_VALUE);
      case PLUS, EQUALS, ADD -> look.zoom(-1, look.anchor());
      case MINUS, SUBTRACT -> look.zoom(1, look.anchor());
      case M -> mark.run();
      default -> {
        return false;
      }
    }
    return true;
  }

  /** To the change before or after. */
  private boolean jumped(KeyEvent key) {
    switch (key.getCode()) {
      case LEFT -> change(-1);
      case RIGHT -> change(1);
      default -> {
        return false;
      }
    }
    return true;
  }

  private long cursor() {
    return look.cursor().get().orElse(look.right());
  }

  private void page(int pages) {
    long by = pages * look.spanNanos();
    look.to(look.right() + by);
    look.cursor().get().ifPresent(at -> look.point(at + by));
  }

  private void change(int direction) {
    look.hold();
    Stretch all = look.all();
    long from = cursor();
    int at = all.inForce(from);
    // Standing on a change, the one before it is wanted.
    int next = direction > 0 ? at + 1 : all.inForce(from - 1);
    while (next > 0 && next < all.nanos().length) {
      if (differs(all, next)) {
        look.point(all.nanos()[next]);
        return;
      }
      next += direction;
    }
  }

  private static boolean differs(Stretch all, int at) {
    return all.touched()[at] != all.touched()[at - 1] || all.known()[at] != all.known()[at - 1];
  }

  private void moved(MouseEvent event) {
    over = true;
    point(event.getX());
  }

  private void left(MouseEvent event) {
    over = false;
    point(NOWHERE);
  }

  private void point(double x) {
    strips.pointer(x);
    pointed.run();
  }

  private void pressed(MouseEvent event) {
    strips.requestFocus();
    pressedX = event.getX();
    pressedRight = look.right();
  }

  /** The picture goes with the hand; as soon as it moves it is held. */
  private void dragged(MouseEvent event) {
    long by = Math.round((pressedX - event.getX()) * strips.pixelNanos());
    look.to(pressedRight + by);
    point(event.getX());
  }

  private void clicked(MouseEvent event) {
    if (event.isStillSincePress() && look.held().get().isPresent()) {
      look.point(strips.moment(event.getX()));
    }
  }

  /**
   * The wheel changes the span where the pointer was moved onto the picture. A page that is
   * scrolled past it goes on being scrolled.
   */
  private void turned(ScrollEvent event) {
    if (!over || event.getDeltaY() == 0 || event.isShortcutDown()) {
      return;
    }
    event.consume();
    turned += event.getDeltaY();
    int notches = (int) (turned / NOTCH);
    if (notches != 0) {
      turned = 0;
      look.zoom(notches > 0 ? -1 : 1, strips.moment(event.getX()));
      point(event.getX());
    }
  }
}
