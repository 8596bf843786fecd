package dev.gantrywright.ui.state;

import dev.gantrywright.app.PortMemory;
import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.serial.PortList;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;

/** Opens a line off the view's thread, since that may wait, and tells on it what came of it. */
final class LineOpening {
  /** Told what came of an attempt, on the view's thread. */
  interface Ended {
    /**
     * The line is open.
     *
     * @param usb identity of its port as the profile keeps it
     */
    void opened(MachineConnection line, Optional<String> usb);

    void failed(String why);

    /** A baud rate is tried; told on no particular thread. False to give up. */
    boolean trying(int baud);
  }

  private final Executor background;
  private final Executor view;

  LineOpening(Executor background, Executor view) {
    this.background = background;
    this.view = view;
  }

  void open(LineRequest request, Ended ended) {
    boolean practice = request.practice();
    background.execute(
        () -> {
          try {
            MachineConnection opened =
                MachineConnection.open(
                    request.profile(),
                    request.address(),
                    practice ? request.firmware().get() : Map.of(),
                    request.search() ? ended::trying : null);
            Optional<String> usb = practice ? Optional.empty() : keepable(request.address());
            view.execute(() -> ended.opened(opened, usb));
          } catch (LinkException | IllegalArgumentException failed) {
            view.execute(() -> ended.failed(failed.getMessage()));
          }
        });
  }

  private static Optional<String> keepable(PortAddress address) {
    return PortMemory.toKeep(address, PortList.system());
  }

  /** Closes a line that came too late, with its log. */
  void giveUp(MachineConnection late) {
    close(late::discard, "late line");
  }

  /** Closes the log of a line that is no longer the last. */
  void giveUp(ByteLog log) {
    close(
        () -> {
          try {
            log.close();
          } catch (IOException e) {
            // Its file is of no use any more, and goes with the program at the latest.
            return;
          }
        },
        "log");
  }

  /** The window may be closing and take no more work. */
  private void close(Runnable closing, String what) {
    try {
      background.execute(closing);
    } catch (RejectedExecutionException windowCloses) {
      new Thread(closing, what).start();
    }
  }
}
