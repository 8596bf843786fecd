package dev.gantrywright.ui.record;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.sheet.AsBuilt;
import dev.gantrywright.app.sheet.SheetFile;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.ProfileState;
import dev.gantrywright.record.StateDifference;
import dev.gantrywright.record.Timeline;
import dev.gantrywright.report.sheet.Sheet;
import dev.gantrywright.ui.state.Cell;
import dev.gantrywright.ui.state.Past;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;

/** What the window shows and does of a printer's record; reads and writes off the view's thread. */
public final class RecordDesk {
  /**
   * An earlier state beside the profile as it stands.
   *
   * @param then the profile at that event
   * @param rows the values that differ, then on the left
   */
  public record Compared(Event event, PrinterProfile then, List<StateDifference.Row> rows) {
    public Compared {
      rows = List.copyOf(rows);
    }
  }

  private final PrinterDesk desk;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<Timeline> timeline = new Cell<>(new Timeline(List.of(), List.of(), 0));
  private final Cell<Optional<Compared>> compared = new Cell<>(Optional.empty());
  private final Cell<String> said = new Cell<>("");
  private final Cell<Optional<Path>> written = new Cell<>(Optional.empty());

  public RecordDesk(PrinterDesk desk, Clock clock, Executor background, Executor view) {
    this.desk = desk;
    this.clock = clock;
    this.background = background;
    this.view = view;
  }

  /** What was kept, as last read. */
  public Cell<Timeline> timeline() {
    return timeline;
  }

  /** The comparison in hand. */
  public Cell<Optional<Compared>> compared() {
    return compared;
  }

  /** What came of the last act; one line. */
  public Cell<String> said() {
    return said;
  }

  /** The sheet that was written last. */
  public Cell<Optional<Path>> written() {
    return written;
  }

  /** Reads the history again. */
  public void look() {
    OpenPrinter printer = desk.printer();
    background.execute(
        () -> {
          try {
            Timeline read = Past.of(printer, clock).timeline();
            view.execute(() -> timeline.set(read));
          } catch (IOException unreadable) {
            say(unreadable.getMessage());
          }
        });
  }

  /** Keeps an event, then reads the history again. */
  public void keep(Past.Writing event) {
    OpenPrinter printer = desk.printer();
    background.execute(
        () -> {
          String trouble = Past.keep(printer, clock, event);
          view.execute(
              () -> {
                said.set(trouble);
                look();
              });
        });
  }

  /** Compares the profile as it was at an event with the profile as it stands. */
  public void compare(Event event) {
    Optional<ProfileState> state = timeline.get().state(event);
    if (state.isEmpty()) {
      said.set(Texts.of("past.noState"));
      return;
    }
    try {
      PrinterProfile then = state.get().profile();
      List<StateDifference.Row> rows = StateDifference.of(then, desk.profile());
      said.set("");
      compared.set(Optional.of(new Compared(event, then, rows)));
    } catch (ProfileProblem newer) {
      said.set(newer.getMessage());
    }
  }

  /** Takes the compared state as the profile: one step that can be undone. */
  public void goBack() {
    compared
        .get()
        .ifPresent(
            chosen -> {
              desk.values()
                  .change(
                      Texts.of("past.wentBack", chosen.event().number()), "", now -> chosen.then());
              compared.set(Optional.empty());
              keep(past -> past.returned(chosen.then(), chosen.event()));
            });
  }

  /**
   * Writes the as-built sheet beside the profile.
   *
   * @param ending {@code .pdf} or {@code .html}
   */
  public void sheet(String ending) {
    OpenPrinter printer = desk.printer();
    said.set(Texts.of("past.writing"));
    background.execute(
        () -> {
          Path file = place(printer.file(), ending);
          try {
            LocalDate day = LocalDate.now(clock);
            Sheet sheet =
                AsBuilt.of(
                    printer,
                    Checking.shipped().check(printer),
                    Past.of(printer, clock).timeline(),
                    day,
                    System.getProperty("user.name", ""));
            SheetFile.write(SheetFile.bytes(sheet, day, file), file);
            view.execute(
                () -> {
                  written.set(Optional.of(file));
                  said.set(Texts.of("past.sheet", file));
                });
          } catch (IOException | RuntimeException failed) {
            say(Texts.of("past.noSheet", file, String.valueOf(failed.getMessage())));
          }
        });
  }

  /** {@code heron-as-built.pdf} beside {@code heron.printer.json}. */
  static Path place(Path profile, String ending) {
    String name = profile.getFileName().toString().replaceFirst("\\.printer\\.json$", "");
    return profile.resolveSibling(name + "-as-built" + ending);
  }

  private void say(String line) {
    view.execute(() -> said.set(line));
  }
}
