package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Works changes into a folder round by round: those that do not touch each other go in together,
 * the folder is read again, and what was refused then gets another chance.
 */
final class PlanBuilder {
  private final FirmwareFolder original;
  private final List<Change> changes;
  private final Outcome[] outcomes;
  private final boolean[] waiting;
  private final Map<String, Pieces> pieces = new HashMap<>();
  private final KeptPlan kept;
  private FirmwareFolder folder;

  /** What the last round edits; not in the folder until another round needs it. */
  private Map<String, List<Edit>> edited = Map.of();

  /**
   * @param kept what the plan before asked of the same folder
   */
  PlanBuilder(FirmwareFolder folder, List<Change> changes, KeptPlan kept) {
    this.original = folder;
    this.kept = kept;
    this.folder = folder;
    this.changes = changes;
    this.outcomes = new Outcome[changes.size()];
    this.waiting = new boolean[changes.size()];
  }

  void run() {
    Arrays.fill(waiting, true);
    Conflicts conflicts = new Conflicts(original);
    for (int i = 0; i < outcomes.length; i++) {
      String conflict = conflicts.with(i + 1, changes.get(i));
      if (conflict != null) {
        outcomes[i] = new Outcome.Refused(conflict);
        waiting[i] = false;
      }
    }
    while (round()) {
      // each round settles a change at least
    }
  }

  /** Whether anything was edited, so that another round may settle more. */
  private boolean round() {
    if (!edited.isEmpty()) {
      if (!anyWaits()) {
        return false;
      }
      folder = kept.round(folder, changed(folder, edited));
      edited = Map.of();
    }
    Map<String, List<Edit>> edits = new TreeMap<>();
    for (int i = 0; i < outcomes.length; i++) {
      if (waiting[i]) {
        propose(i, edits);
      }
    }
    edits.forEach(
        (path, list) -> {
          list.sort(Comparator.comparingInt(e -> e.span().start()));
          pieces.computeIfAbsent(path, p -> new Pieces(original.bytesOf(p).length)).apply(list);
        });
    edited = edits;
    return !edits.isEmpty();
  }

  private boolean anyWaits() {
    for (boolean waits : waiting) {
      if (waits) {
        return true;
      }
    }
    return false;
  }

  private static Map<String, byte[]> changed(FirmwareFolder folder, Map<String, List<Edit>> edits) {
    Map<String, byte[]> changed = new TreeMap<>();
    edits.forEach((path, list) -> changed.put(path, FileEdits.spliced(folder.bytesOf(path), list)));
    return changed;
  }

  private void propose(int i, Map<String, List<Edit>> edits) {
    KeptPlan.Tried tried =
        folder == original ? kept.tried(changes.get(i), this::attempt) : attempt(changes.get(i));
    Proposal proposal = tried.proposal();
    if (proposal instanceof Proposal.Already already) {
      settle(i, new Outcome.AlreadySo(already.path(), already.line()));
    } else if (proposal instanceof Proposal.No no) {
      outcomes[i] = new Outcome.Refused(no.reason());
      waiting[i] = no.mayChange();
    } else if (proposal instanceof Proposal.Edits wanted) {
      List<Edit> round = edits.computeIfAbsent(wanted.path(), p -> new ArrayList<>());
      boolean touches = wanted.edits().stream().anyMatch(e -> round.stream().anyMatch(e::touches));
      if (touches) {
        outcomes[i] = new Outcome.Refused("it waits for another change of this plan");
        return;
      }
      String newLine = tried.newLine();
      if (newLine == null) {
        settle(
            i,
            new Outcome.Refused(
                "the edit at " + wanted.path() + " would change more than was asked; not done"));
      } else {
        round.addAll(wanted.edits());
        settle(
            i,
            new Outcome.Applied(
                wanted.path(), tried.line(), wanted.oldLine(), newLine, wanted.note()));
      }
      if (round.isEmpty()) {
        edits.remove(wanted.path());
      }
    }
  }

  private void settle(int i, Outcome outcome) {
    outcomes[i] = outcome;
    waiting[i] = false;
  }

  /** What a change would do to the folder as it stands, with the proof that it does no more. */
  private KeptPlan.Tried attempt(Change change) {
    Proposal proposal = proposal(change);
    if (proposal instanceof Proposal.Edits wanted) {
      String newLine = proven(wanted);
      return new KeptPlan.Tried(proposal, newLine, newLine == null ? 0 : lineIn(wanted));
    }
    return new KeptPlan.Tried(proposal, null, 0);
  }

  private int lineIn(Proposal.Edits wanted) {
    return folder
        .header(wanted.path())
        .map(header -> header.lineOf(wanted.offset()))
        .orElseGet(() -> LineIndex.of(folder.bytesOf(wanted.path())).lineOf(wanted.offset()));
  }

  /** The line as it will read, or null if the edit does more than it should. */
  private String proven(Proposal.Edits wanted) {
    byte[] now = folder.bytesOf(wanted.path());
    List<Edit> sorted = new ArrayList<>(wanted.edits());
    sorted.sort(Comparator.comparingInt(e -> e.span().start()));
    if (wanted.row() < 0) {
      byte[] then = FileEdits.spliced(now, sorted);
      return IniChanges.lineAt(wanted.path(), then, wanted.offset());
    }
    SourceFile before = folder.header(wanted.path()).orElseThrow().source();
    if (!wanted.inserts()) {
      String near = NearProof.line(before, sorted, wanted.row(), wanted.offset());
      if (near != null) {
        return near;
      }
    }
    byte[] then = FileEdits.spliced(now, sorted);
    SourceFile after = SourceFile.of(wanted.path(), then);
    if (!EditProof.holds(before, after, sorted, wanted.row(), wanted.inserts())) {
      return null;
    }
    if (wanted.inserts()) {
      return new String(sorted.get(0).replacement(), after.charset()).strip();
    }
    return after.text(wanted.offset(), after.table().end(wanted.row()));
  }

  private Proposal proposal(Change change) {
    HeaderChanges headers = new HeaderChanges(folder);
    if (change instanceof Change.SetValue c) {
      return headers.setValue(c);
    } else if (change instanceof Change.SetElement c) {
      return headers.setElement(c);
    } else if (change instanceof Change.SwitchOn c) {
      return headers.switchOn(c);
    } else if (change instanceof Change.SwitchOff c) {
      return headers.switchOff(c);
    } else if (change instanceof Change.InsertAfter c) {
      return headers.insertAfter(c);
    }
    return new IniChanges(folder).setKey((Change.SetKey) change);
  }

  /** Makes the folder as the plan leaves it; any thread may ask. */
  Supplier<FirmwareFolder> after() {
    FirmwareFolder last = folder;
    Map<String, List<Edit>> left = edited;
    return () -> left.isEmpty() ? last : last.with(changed(last, left), last);
  }

  List<Outcome> outcomes() {
    return List.of(outcomes);
  }

  SortedMap<String, FileEdits> files() {
    SortedMap<String, FileEdits> out = new TreeMap<>();
    pieces.forEach(
        (path, p) -> {
          List<Edit> edits = p.edits();
          if (!edits.isEmpty()) {
            out.put(path, new FileEdits(path, original.editable(path).sha256(), edits));
          }
        });
    return out;
  }
}
