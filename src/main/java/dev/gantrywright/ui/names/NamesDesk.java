package dev.gantrywright.ui.names;

import dev.gantrywright.app.History;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.FolderStudy;
import dev.gantrywright.names.FoundPlace;
import dev.gantrywright.names.LearningWatch;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.ui.state.Cell;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Texts;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/** The name map in hand: its entries, its edits by name with undo, learning in the background. */
public final class NamesDesk implements Subscription {
  private final PrinterDesk desk;
  private final BiFunction<FirmwareFolder, LearningWatch, FolderStudy> studying;
  private final Clock clock;
  private final Executor background;
  private final Executor view;
  private final Cell<History<NameMap>> history;
  private final Cell<NamesState> state = new Cell<>(NamesState.of(NamesState.Kind.IDLE));
  private final Cell<String> said = new Cell<>("");
  private final NamesFile file;
  private final Subscription follow;
  private FirmwareFolder read;
  private FolderStudy study;
  private AtomicBoolean stop = new AtomicBoolean();
  private boolean begun;
  private boolean closed;

  /**
   * @param studying reads a folder for learning; may take time
   * @param background runs it, and saves
   */
  public NamesDesk(
      PrinterDesk desk,
      BiFunction<FirmwareFolder, LearningWatch, FolderStudy> studying,
      Clock clock,
      Executor background,
      Executor view) {
    this.desk = desk;
    this.studying = studying;
    this.clock = clock;
    this.background = background;
    this.view = view;
    NameMap names = desk.opened().get().names();
    history = new Cell<>(History.of(names == null ? NameMap.EMPTY : names));
    file = new NamesFile(desk, background, view, said);
    read = desk.opened().get().folder();
    follow = desk.opened().listen(opened -> follow(opened.folder()));
  }

  public Cell<History<NameMap>> history() {
    return history;
  }

  Cell<NamesState> state() {
    return state;
  }

  /** The last thing worth saying about learning and saving. */
  Cell<String> said() {
    return said;
  }

  NameMap map() {
    return history.get().present();
  }

  Optional<FirmwareFolder> folder() {
    return Optional.ofNullable(desk.opened().get().folder());
  }

  /** Reads the folder where that has not happened; a folder without a map gets one proposed. */
  void begin() {
    begun = true;
    if (folder().isEmpty()) {
      state.set(NamesState.of(NamesState.Kind.NO_FOLDER));
    } else if (state.get().kind() == NamesState.Kind.IDLE) {
      read(map(), map().fields().isEmpty() ? Texts.of("names.did.learned") : "");
    }
  }

  /** Another folder is open: what was learned of the former one says nothing of it. */
  private void follow(FirmwareFolder now) {
    if (now == read) {
      return;
    }
    read = now;
    study = null;
    stop.set(true);
    state.set(NamesState.of(now == null ? NamesState.Kind.NO_FOLDER : NamesState.Kind.IDLE));
    if (begun && now != null) {
      begin();
    }
  }

  /** Learns anew; what the user set stays. */
  void learn() {
    if (folder().isPresent()) {
      read(map(), Texts.of("names.did.learned"));
    }
  }

  /** Leaves a field to learning again. */
  void leave(String path) {
    read(map().without(path), Texts.of("names.did.left", PlaceNames.field(path)));
  }

  /** Ends the reading that is under way; nothing of it is kept. */
  void cancel() {
    stop.set(true);
  }

  /**
   * @param from what the user set in it stays
   * @param label of the edit that takes what is proposed; empty where only reading is wanted
   */
  private void read(NameMap from, String label) {
    if (state.get().kind() == NamesState.Kind.LEARNING) {
      return;
    }
    FirmwareFolder folder = folder().orElseThrow();
    AtomicBoolean mine = new AtomicBoolean();
    stop = mine;
    state.set(NamesState.of(NamesState.Kind.LEARNING));
    long revision = history.get().revision();
    FolderStudy known = study != null && study.folder() == folder ? study : null;
    background.execute(
        () -> {
          NamesState end = NamesState.of(NamesState.Kind.READY);
          FolderStudy read = known;
          NameMap proposed = null;
          try {
            read = known == null ? studying.apply(folder, watch(mine)) : known;
            proposed = label.isEmpty() ? null : read.map(from);
          } catch (LearningWatch.LearningStopped stopped) {
            end = NamesState.of(NamesState.Kind.STOPPED);
          } catch (RuntimeException broken) {
            String why = Texts.of("names.failed", String.valueOf(broken.getMessage()));
            end = new NamesState(NamesState.Kind.FAILED, 0, why);
          }
          NamesState reached = end;
          FolderStudy got = read;
          NameMap next = proposed;
          view.execute(() -> finish(folder, reached, got, next, label, revision));
        });
  }

  private LearningWatch watch(AtomicBoolean mine) {
    return new LearningWatch() {
      @Override
      public void reached(double share) {
        view.execute(
            () -> {
              if (!mine.get() && state.get().kind() == NamesState.Kind.LEARNING) {
                state.set(new NamesState(NamesState.Kind.LEARNING, share, ""));
              }
            });
      }

      @Override
      public boolean stopped() {
        return mine.get();
      }
    };
  }

  private void finish(
      FirmwareFolder of,
      NamesState reached,
      FolderStudy read,
      NameMap proposed,
      String label,
      long revision) {
    if (closed || of != this.read) {
      return;
    }
    if (reached.kind() == NamesState.Kind.READY) {
      study = read;
    }
    state.set(reached);
    if (proposed != null && history.get().revision() != revision) {
      // The user went on while the folder was read: what they set meanwhile counts.
      read(map(), label);
    } else if (proposed != null) {
      change(label, now -> proposed);
    }
  }

  /** The rows in the order of the machine's parts; fields that no part shows come last. */
  List<NameRow> rows() {
    Set<String> paths = new LinkedHashSet<>();
    NameMap map = map();
    Set<String> known = new LinkedHashSet<>(map.fields().keySet());
    if (study != null) {
      known.addAll(study.paths());
    }
    desk.parts()
        .forEach(
            part ->
                part.groups().forEach(group -> group.rows().forEach(row -> paths.add(row.path()))));
    paths.retainAll(known);
    paths.addAll(map.fields().keySet());
    List<NameRow> rows = new ArrayList<>();
    paths.forEach(path -> rows.add(new NameRow(path, map.fields().get(path))));
    return rows;
  }

  /** Accepts a field's proposal as it is. */
  void accept(String path) {
    map()
        .entry(path)
        .filter(entry -> entry.macro() != null)
        .ifPresent(
            entry ->
                set(
                    "names.did.accepted",
                    path,
                    NameRow.shown(entry.macro(), entry.element()),
                    entry.accepted()));
  }

  /** Gives a field a place of the folder, with what it means there. */
  void choose(String path, FoundPlace place) {
    NameEntry entry =
        study == null
            ? NameEntry.chosen(place.macro(), place.element(), place.file(), place.line())
            : study.choice(path, place);
    set("names.did.chose", path, place.shown(), entry);
  }

  /** Gives a field one of its runners-up. */
  void choose(String path, String macro, Integer element) {
    NameEntry wanted = NameEntry.chosen(macro, element, null, null);
    Optional<FoundPlace> place = study == null ? Optional.empty() : study.place(wanted);
    place.ifPresent(found -> choose(path, found));
  }

  /** Says that this firmware has no setting for a field. */
  void none(String path) {
    set("names.did.none", path, "", NameEntry.notInThisFirmware());
  }

  /** Changes what a field's place means, or the unit in which it stands. */
  void settle(String path, NameEntry entry) {
    set("names.did.meaning", path, entry.macro(), entry.settled());
  }

  private void set(String key, String path, String macro, NameEntry entry) {
    change(Texts.of(key, PlaceNames.field(path), macro), now -> now.with(path, entry));
  }

  /** Whether the folder has been read, so that its places can be found. */
  boolean ready() {
    return study != null;
  }

  /** The places of the folder that match what the user types, best first. */
  List<FoundPlace> find(String typed, int most) {
    return study == null ? List.of() : study.find(typed, most);
  }

  /** Sets several profile values as one named edit. */
  Optional<String> fill(String label, Map<String, String> values) {
    return ProfileFill.apply(desk, label, values);
  }

  /** A named change of the map, such as a remedy. */
  public void change(String label, UnaryOperator<NameMap> change) {
    history.update(now -> now.edit(label, "", change.apply(now.present()), clock.instant()));
    spread();
  }

  public void undo() {
    history.update(History::undo);
    spread();
  }

  public void redo() {
    history.update(History::redo);
    spread();
  }

  /** The checks and the plan follow the map, and its file does. */
  private void spread() {
    OpenPrinter opened = desk.opened().get();
    NameMap map = map();
    if (map.equals(opened.names())) {
      return;
    }
    desk.reopened(opened.with(desk.profile(), map));
    file.keep(map);
  }

  @Override
  public void close() {
    closed = true;
    follow.close();
    stop.set(true);
  }
}
