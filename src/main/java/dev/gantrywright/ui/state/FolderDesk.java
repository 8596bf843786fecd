package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.header.Progress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.rules.UnreadFolder;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Follows the firmware folder and the board sheet that the profile names: once another one is named
 * and nobody types, it is read off the view's thread. Until then the former one stays open, and the
 * state says so. All calls but the reading itself run on the view's thread.
 */
public final class FolderDesk implements Subscription {
  /** Opens the parts that a profile names; may take time. */
  public interface Reading {
    OpenPrinter open(Path file, PrinterProfile profile, Progress progress);
  }

  /** Of the reading, what is told at once. */
  private static final int STEPS = 50;

  /** Between two tellings of how much is listed, nanoseconds. */
  private static final long TELL_NANOS = 100_000_000;

  /** The share of files read while nobody knows how many there are. */
  private static final double LISTING = -1;

  private record Named(String folder, String sheet) {
    static Named of(PrinterProfile profile) {
      return new Named(plain(profile.build().folder()), plain(profile.board().sheet()));
    }

    private static String plain(String name) {
      return name == null ? "" : name.strip();
    }
  }

  private final PrinterDesk desk;
  private final Reading reading;
  private final Executor later;
  private final Executor background;
  private final Executor view;
  private final Cell<FolderState> state;
  private final Subscription follow;
  private Named open;
  private Named wanted;
  private long round;
  private AtomicBoolean ended = new AtomicBoolean();

  /**
   * @param later runs something after the pause that ends a word
   * @param background reads
   */
  public FolderDesk(
      PrinterDesk desk, Reading reading, Executor later, Executor background, Executor view) {
    this.desk = desk;
    this.reading = reading;
    this.later = later;
    this.background = background;
    this.view = view;
    open = Named.of(desk.opened().get().profile());
    wanted = open;
    state = new Cell<>(state(FolderState.Kind.CURRENT, 0, ""));
    follow = desk.values().history().observe(history -> follow());
  }

  public Cell<FolderState> state() {
    return state;
  }

  /** Whether all that the profile names has been read, or is known to be unread. */
  boolean whole() {
    return open.equals(wanted) || !state.get().reads();
  }

  /**
   * What is known of a printer: without the former folder or board sheet once another one is named,
   * since nothing that they say is so of the new one.
   */
  OpenPrinter known(OpenPrinter printer) {
    boolean sheet = wanted.sheet().equals(open.sheet());
    boolean folder = wanted.folder().equals(open.folder());
    if (sheet && folder) {
      return printer;
    }
    return new OpenPrinter(
        printer.file(),
        printer.profile(),
        sheet ? printer.sheet() : null,
        folder ? printer.folder() : null,
        printer.names(),
        folder ? printer.unreadFolder() : unread(),
        printer.problems());
  }

  /** Why the folder that is named now is not open; null while it is still to be read. */
  private UnreadFolder unread() {
    FolderState now = state.get();
    return now.reads() || now.named().isEmpty()
        ? null
        : new UnreadFolder(
            now.named(), Texts.of("folder.unread." + now.word(), now.named(), now.words()));
  }

  private void follow() {
    Named next = Named.of(desk.profile());
    if (next.equals(wanted)) {
      return;
    }
    wanted = next;
    long mine = overtake();
    if (next.equals(open)) {
      state.set(state(FolderState.Kind.CURRENT, 0, ""));
      return;
    }
    state.set(state(FolderState.Kind.WAITING, 0, ""));
    later.execute(
        () ->
            view.execute(
                () -> {
                  if (mine == round) {
                    read();
                  }
                }));
  }

  /** What is under way no longer counts. */
  private long overtake() {
    ended.set(true);
    return ++round;
  }

  private FolderState state(FolderState.Kind kind, double share, String words) {
    return new FolderState(kind, wanted.folder(), open.folder(), share, words);
  }

  /** Reads what the profile names now; the former one stays open until that is done. */
  public void read() {
    long mine = overtake();
    AtomicBoolean stop = new AtomicBoolean();
    ended = stop;
    boolean same = wanted.folder().equals(open.folder());
    PrinterProfile profile = desk.profile();
    Path file = desk.opened().get().file();
    state.set(state(FolderState.Kind.READING, 0, ""));
    background.execute(
        () -> {
          try {
            OpenPrinter read =
                reading.open(file, same ? withoutFolder(profile) : profile, progress(mine, stop));
            view.execute(() -> finish(mine, read, same));
          } catch (CancellationException overtaken) {
            // Whoever ended it has said so.
            return;
          } catch (RuntimeException broken) {
            view.execute(() -> failed(mine, broken));
          }
        });
  }

  private Progress progress(long mine, AtomicBoolean stop) {
    Progress ends = Progress.until(stop::get);
    return new Progress() {
      private long next = System.nanoTime();

      @Override
      public void listed(int entries) {
        ends.listed(entries);
        long now = System.nanoTime();
        if (now - next >= 0) {
          next = now + TELL_NANOS;
          view.execute(() -> reached(mine, LISTING, Texts.of("folder.listed", entries)));
        }
      }

      @Override
      public void read(int done, int total, String path) {
        ends.read(done, total, path);
        if (done * STEPS / total != (done - 1) * STEPS / total) {
          view.execute(() -> reached(mine, (double) done / total, ""));
        }
      }
    };
  }

  private void reached(long mine, double share, String words) {
    if (mine == round) {
      state.set(state(FolderState.Kind.READING, share, words));
    }
  }

  private static PrinterProfile withoutFolder(PrinterProfile profile) {
    try {
      return ProfileValues.with(profile, "build.folder", null);
    } catch (ProfileProblem impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private void finish(long mine, OpenPrinter read, boolean same) {
    if (mine != round) {
      return;
    }
    OpenPrinter was = desk.opened().get();
    List<String> problems = new ArrayList<>(read.problems());
    if (same && was.unreadFolder() != null) {
      problems.add(was.unreadFolder().why());
    }
    open = wanted;
    // The name map is edited beside the profile; what is in hand counts, not what its file holds.
    desk.reopened(
        new OpenPrinter(
            was.file(),
            desk.profile(),
            read.sheet(),
            same ? was.folder() : read.folder(),
            was.names(),
            same ? was.unreadFolder() : read.unreadFolder(),
            problems));
    if (mine == round) {
      state.set(state(FolderState.Kind.CURRENT, 0, ""));
    }
  }

  private void failed(long mine, RuntimeException broken) {
    if (mine == round) {
      String why = Objects.requireNonNullElse(broken.getMessage(), broken.toString());
      state.set(state(FolderState.Kind.FAILED, 0, why));
    }
  }

  /** Ends the reading that is under way; the former folder stays open. */
  public void cancel() {
    if (state.get().kind() == FolderState.Kind.READING) {
      overtake();
      state.set(state(FolderState.Kind.STOPPED, 0, ""));
    }
  }

  @Override
  public void close() {
    follow.close();
    overtake();
  }
}
