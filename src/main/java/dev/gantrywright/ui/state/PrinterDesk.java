package dev.gantrywright.ui.state;

import dev.gantrywright.app.BuiltFirmware;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.patch.PatchPlan;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.BiConsumer;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** One open printer: its values, what was found, what is in hand, its line. */
public final class PrinterDesk implements AutoCloseable {
  /** Id of the part that holds the names of the firmware folder; it has no fields of its own. */
  public static final String NAMES = "names";

  /** Nobody types for so long in the middle of a folder's name. */
  private static final long PAUSE_MILLISECONDS = 400;

  private final PartTable parts = PartTable.shipped();
  private final Cell<OpenPrinter> opened;
  private final ProfileDesk values;
  private final LinkDesk link;
  private final TraceLook look;
  private final Latest<Work, Judged> judge;
  private final Latest<Work, Planned> planner;
  private final Cell<Planned> planned = new Cell<>(Planned.nothing());
  private final Inspection inspection;
  private final PlanDesk plans = new PlanDesk();
  private final Cell<Judged> judged = new Cell<>(Judged.nothing());
  private final Cell<String> trouble = new Cell<>("");
  private final Cell<Stage> stage = new Cell<>(Stage.DESCRIBE);
  private final Cell<String> part = new Cell<>("printer");
  private final Cell<Optional<String>> focus = new Cell<>(Optional.empty());
  private final Cell<Integer> recorded = new Cell<>(0);
  private final Cell<Optional<String>> line = new Cell<>(Optional.empty());
  private final Cell<Optional<MarginNote>> page = new Cell<>(Optional.empty());
  private final Subscriptions follow = new Subscriptions();
  private final FolderDesk folder;
  private Work checked;
  private List<Part> allParts = List.of();
  private List<Part> allOf;
  private Map<String, Gravity> marks = Map.of();
  private List<MarginNote> marksOf;
  private List<Part> marksIn;
  private BiConsumer<String, UnaryOperator<NameMap>> names = (label, change) -> {};

  /**
   * @param whole false where something that the profile names is still to be read
   */
  private record Work(long revision, OpenPrinter printer, boolean whole) {}

  /**
   * @param reading reads the folder that the profile names
   * @param background runs checks, plans and the line's opening
   * @param view hands results over to the view's thread
   */
  public PrinterDesk(
      OpenPrinter printer,
      Inspector inspector,
      Clock clock,
      FolderDesk.Reading reading,
      Executor background,
      Executor view) {
    this(
        printer,
        inspector,
        clock,
        reading,
        CompletableFuture.delayedExecutor(PAUSE_MILLISECONDS, TimeUnit.MILLISECONDS, background),
        background,
        view);
  }

  /** With another way to wait for the end of typing. */
  PrinterDesk(
      OpenPrinter printer,
      Inspector inspector,
      Clock clock,
      FolderDesk.Reading reading,
      Executor later,
      Executor background,
      Executor view) {
    this.opened = new Cell<>(printer);
    this.values = new ProfileDesk(printer.profile(), clock);
    this.link = new LinkDesk(background, view);
    this.look = new TraceLook(link::trace, System::nanoTime, clock);
    this.inspection = inspector.follow();
    this.judge =
        new Latest<>(
            background,
            view,
            work -> new Judged(work.revision(), inspection.inspect(work.printer()), work.whole()),
            (work, result) -> {
              trouble.set("");
              judged.set(result);
            },
            (work, failed) ->
                trouble.set(Texts.of("check.failed", String.valueOf(failed.getMessage()))));
    this.planner =
        new Latest<>(
            background,
            view,
            work -> plans.plan(work.revision(), work.printer()),
            (work, result) -> planned.set(result),
            (work, failed) ->
                trouble.set(Texts.of("check.failed", String.valueOf(failed.getMessage()))));
    folder = new FolderDesk(this, reading, later, background, view);
    follow.add(values.history().observe(history -> work()));
    follow.add(folder.state().listen(state -> judgeAnew()));
  }

  private void work() {
    judge();
    planner.put(planning());
  }

  private void judge() {
    checked = new Work(values.revision(), folder.known(printer()), folder.whole());
    judge.put(checked);
  }

  /** A reading that was ended, or begun again, changes what is known, not the profile. */
  private void judgeAnew() {
    boolean edited = checked.revision() != values.revision();
    if (!edited && checked.whole() != folder.whole()) {
      judge();
    }
  }

  private Work planning() {
    return new Work(values.revision(), printer(), folder.whole());
  }

  /** The printer with its profile as it stands now. */
  public OpenPrinter printer() {
    return opened.get().with(profile(), opened.get().names());
  }

  /** What is looked at of the endstops' trace, and the marks in it. */
  public TraceLook look() {
    return look;
  }

  /** How many events were written into the printer's history by hand of the Prove stage. */
  public Cell<Integer> recorded() {
    return recorded;
  }

  /** Whether the open folder is the one that the profile names, and reading it. */
  public FolderDesk folder() {
    return folder;
  }

  /** Board sheet, folder or name map were read anew. */
  public void reopened(OpenPrinter printer) {
    if (printer.folder() != opened.get().folder()) {
      // What was planned for the former folder is not to be written any more.
      planned.set(Planned.nothing());
    }
    opened.set(printer);
    work();
  }

  public Cell<OpenPrinter> opened() {
    return opened;
  }

  public ProfileDesk values() {
    return values;
  }

  public LinkDesk link() {
    return link;
  }

  public PrinterProfile profile() {
    return values.profile();
  }

  public Optional<BoardSheet> sheet() {
    return Optional.ofNullable(opened.get().sheet());
  }

  /** What was worked out last; its revision says from what. */
  public Cell<Judged> judged() {
    return judged;
  }

  /** What would be written; its revision says for what. */
  public Cell<Planned> planned() {
    return planned;
  }

  /** Every setting of the folder; empty until the folder has been walked. */
  public List<FoundSetting> settings() {
    return plans.settings();
  }

  /** From now on the plan comes with every line of its files, or without. */
  public void wholeFiles(boolean wanted) {
    if (plans.whole(wanted)) {
      planner.put(planning());
    }
  }

  /** Whether a newer revision is being worked out. */
  public Cell<Boolean> judging() {
    return judge.busy();
  }

  /** Why nothing could be worked out; empty where it could. */
  public Cell<String> trouble() {
    return trouble;
  }

  public List<MarginNote> notes() {
    return judged.get().notes();
  }

  public Cell<Stage> stage() {
    return stage;
  }

  /** Id of the part in hand. */
  public Cell<String> part() {
    return part;
  }

  /** The field that asks for the keyboard; taken by the view that shows it. */
  public Cell<Optional<String>> focus() {
    return focus;
  }

  /** The field whose line the Write stage is to show; taken by it. */
  public Cell<Optional<String>> line() {
    return line;
  }

  /** The parts of the machine in the order of the outline; the folder's names come last. */
  public List<Part> parts() {
    List<Part> ofMachine = parts.parts(profile());
    if (allOf != ofMachine) {
      List<Part> all = new ArrayList<>(ofMachine);
      all.add(new Part(NAMES, PlaceNames.part(NAMES), List.of()));
      allParts = List.copyOf(all);
      allOf = ofMachine;
    }
    return allParts;
  }

  public Optional<Part> partInHand() {
    return parts().stream().filter(each -> each.id().equals(part.get())).findFirst();
  }

  /** The gravest note of each part that has one. */
  public Map<String, Gravity> marks() {
    List<Part> ofMachine = parts.parts(profile());
    if (marksOf != notes() || marksIn != ofMachine) {
      marks = Map.copyOf(MarginNotes.byPart(profile(), parts, notes()));
      marksOf = notes();
      marksIn = ofMachine;
    }
    return marks;
  }

  /** Opens the part that holds a field and gives the field the keyboard. */
  public void goTo(String path) {
    parts
        .partOf(profile(), path)
        .or(() -> parts().stream().filter(each -> each.id().equals(path)).findFirst())
        .ifPresent(
            found -> {
              part.set(found.id());
              stage.set(Stage.DESCRIBE);
              focus.set(Optional.of(path));
            });
  }

  /** Shows the line of the firmware folder that a field decides. */
  public void goToLine(String path) {
    stage.set(Stage.WRITE);
    line.set(Optional.of(path));
  }

  /** Applies a note's fix as one named edit of the profile, or of the name map. */
  public void apply(MarginNote note, MarginNote.Fix fix) {
    String label = fix.title() + " (" + note.place() + ")";
    values.change(label, "", fix.change());
    if (fix.names() != null) {
      names.accept(label, fix.names());
    }
  }

  /** Who edits the name map of the folder. */
  public void namesBy(BiConsumer<String, UnaryOperator<NameMap>> editor) {
    names = editor;
  }

  /** The note whose rule's page is asked for; taken by the window that shows it. */
  public Cell<Optional<MarginNote>> page() {
    return page;
  }

  /**
   * What the firmware of the practice board is built with: the values of the folder as the plan
   * leaves it. Takes time; any thread may ask what is returned.
   */
  public Supplier<Map<String, String>> firmware() {
    OpenPrinter printer = printer();
    return () ->
        printer.folder() == null || printer.names() == null
            ? Map.of()
            : BuiltFirmware.values(
                PatchPlan.of(printer.profile(), printer.names(), printer.folder()).patched(),
                printer.names());
  }

  /**
   * Sets a note aside, as a named edit; does nothing where the note is no longer there.
   *
   * @param date ISO date
   */
  public void waive(MarginNote note, String reason, String date) {
    inspection
        .evidence(note.key())
        .ifPresent(
            evidence ->
                values.change(
                    Texts.of("check.waived", note.place()),
                    "",
                    now -> Waived.with(now, note.key(), evidence, reason, date)));
  }

  /** Applies the first safe fix of every note, as one named edit. */
  public int applySafe() {
    List<MarginNote.Fix> fixes =
        notes().stream()
            .flatMap(
                note ->
                    note.fixes().stream()
                        .filter(
                            fix -> fix.safety() == MarginNote.Safety.SAFE && fix.names() == null)
                        .limit(1))
            .toList();
    values.change(
        Texts.of("check.applied", fixes.size()),
        "",
        profile -> {
          PrinterProfile now = profile;
          for (MarginNote.Fix fix : fixes) {
            now = fix.change().apply(now);
          }
          return now;
        });
    return fixes.size();
  }

  @Override
  public void close() {
    follow.close();
    folder.close();
    judge.forget();
    planner.forget();
    link.close();
  }
}
