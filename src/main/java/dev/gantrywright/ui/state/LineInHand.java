package dev.gantrywright.ui.state;

import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.SessionListener;
import dev.gantrywright.link.SessionState;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.prove.Sample;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * The one line that is open or being opened, and how it stands. Of several attempts only the newest
 * counts: what comes of an earlier one is given up. Lives on the view's thread.
 */
final class LineInHand {
  /** Who lives by the line; told on the view's thread. */
  interface Dependents {
    /**
     * It is open.
     *
     * @param current whether it is still the one in hand
     * @return what receives its samples, on the watch's thread
     */
    Consumer<Sample> opened(MachineConnection line, LineRequest request, BooleanSupplier current);

    void restarted(String banner);

    /** It does not answer: nothing may be taken for armed. */
    void down();
  }

  private final Executor background;
  private final Executor view;
  private final LineOpening opening;
  private final Dependents dependents;
  private final Cell<LinkStatus> status = new Cell<>(LinkStatus.none());
  private final Cell<Optional<String>> usbPort = new Cell<>(Optional.empty());
  private final Cell<Optional<Integer>> foundBaud = new Cell<>(Optional.empty());
  private final AtomicLong attempt = new AtomicLong();
  private volatile Runnable beforeClosing = () -> {};
  private MachineConnection connection;
  private PrinterProfile built;
  private LineRequest last;

  LineInHand(Executor background, Executor view, LineOpening opening, Dependents dependents) {
    this.background = background;
    this.view = view;
    this.opening = opening;
    this.dependents = dependents;
  }

  Cell<LinkStatus> status() {
    return status;
  }

  Cell<Optional<String>> usbPort() {
    return usbPort;
  }

  Cell<Optional<Integer>> foundBaud() {
    return foundBaud;
  }

  PrinterProfile built() {
    return built;
  }

  Optional<MachineConnection> connection() {
    return Optional.ofNullable(connection);
  }

  Optional<LineSession> session() {
    return connection().map(MachineConnection::session);
  }

  void beforeClosing(Runnable end) {
    beforeClosing = end;
  }

  /** The request that was made last, with what the profile says now; empty where none stands. */
  Optional<LineRequest> again(PrinterProfile profile) {
    return last != null && status.get().held() ? Optional.of(last.of(profile)) : Optional.empty();
  }

  /** Begins an attempt; what was in hand has been given up. */
  void open(LineRequest request) {
    last = request;
    long mine = attempt.incrementAndGet();
    boolean practice = request.practice();
    String port = request.port();
    status.set(
        new LinkStatus(LinkStatus.Kind.CONNECTING, port, Texts.of("link.opening"), practice));
    opening.open(
        request,
        new LineOpening.Ended() {
          @Override
          public void opened(MachineConnection line, Optional<String> usb) {
            LineInHand.this.opened(mine, line, request);
            usbPort.set(current(mine) ? usb : usbPort.get());
          }

          @Override
          public void failed(String why) {
            if (current(mine)) {
              status.set(new LinkStatus(LinkStatus.Kind.LOST, port, why, practice));
            }
          }

          @Override
          public boolean trying(int baud) {
            view.execute(() -> LineInHand.this.trying(mine, baud));
            return current(mine);
          }
        });
  }

  private boolean current(long mine) {
    return mine == attempt.get();
  }

  private void trying(long mine, int baud) {
    LinkStatus now = status.get();
    if (current(mine) && now.kind() == LinkStatus.Kind.CONNECTING) {
      String words = Texts.of("link.trying", String.valueOf(baud));
      status.set(new LinkStatus(now.kind(), now.port(), words, now.practice()));
    }
  }

  private void opened(long mine, MachineConnection opened, LineRequest request) {
    if (!current(mine)) {
      opening.giveUp(opened);
      return;
    }
    connection = opened;
    built = opened.practice().isPresent() ? request.profile() : null;
    foundBaud.set(request.search() ? Optional.of(opened.baud()) : Optional.empty());
    Consumer<Sample> samples = dependents.opened(opened, request, () -> current(mine));
    opened.session().subscribe(listener(mine));
    opened.watch(request.ends(), request.hertz(), samples);
    standing(mine, opened.session().state(), opened.session().note());
  }

  private SessionListener listener(long mine) {
    return new SessionListener() {
      @Override
      public void state(SessionState state, String note) {
        view.execute(() -> standing(mine, state, note));
      }

      @Override
      public void restarted(String banner) {
        view.execute(() -> dependents.restarted(banner));
      }
    };
  }

  private void standing(long mine, SessionState state, String note) {
    if (!current(mine)) {
      return;
    }
    LinkStatus now = status.get();
    LinkStatus.Kind kind =
        switch (state) {
          case UP -> LinkStatus.Kind.UP;
          case OPENING, SYNCING -> LinkStatus.Kind.CONNECTING;
          default -> LinkStatus.Kind.LOST;
        };
    String words = note.isEmpty() ? state.phrase() : state.phrase() + ": " + note;
    status.set(new LinkStatus(kind, now.port(), words, now.practice()));
    if (kind != LinkStatus.Kind.UP) {
      dependents.down();
    }
  }

  void watchAt(double hertz) {
    if (last != null) {
      last = last.at(hertz);
      pace(0);
    }
  }

  void pace(double hertz) {
    MachineConnection open = connection;
    if (open != null) {
      double wanted = hertz > 0 ? hertz : last.hertz();
      background.execute(() -> open.pace(wanted));
    }
  }

  /** Closes it, off the view's thread; the status says so once {@link #gone} is called. */
  void giveUp() {
    attempt.incrementAndGet();
    MachineConnection closing = connection;
    connection = null;
    built = null;
    if (closing != null) {
      Runnable end = beforeClosing;
      background.execute(
          () -> {
            end.run();
            closing.close();
          });
    }
    foundBaud.set(Optional.empty());
  }

  /** Tells that no line is in hand. */
  void gone() {
    status.set(LinkStatus.none());
  }
}
