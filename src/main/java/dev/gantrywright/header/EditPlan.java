package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/**
 * What a list of changes does to a folder: an outcome for each change, and the byte edits of each
 * file. The folder itself is never written to.
 */
public final class EditPlan {
  private final FirmwareFolder before;
  private Supplier<FirmwareFolder> making;
  private volatile FirmwareFolder after;
  private final List<Change> changes;
  private final List<Outcome> outcomes;
  private final SortedMap<String, FileEdits> files;

  private EditPlan(
      FirmwareFolder before,
      Supplier<FirmwareFolder> making,
      List<Change> changes,
      List<Outcome> outcomes,
      SortedMap<String, FileEdits> files) {
    this.before = before;
    this.making = making;
    this.changes = List.copyOf(changes);
    this.outcomes = List.copyOf(outcomes);
    this.files = java.util.Collections.unmodifiableSortedMap(new TreeMap<>(files));
  }

  /** Works out the plan. A change that waits for another one (such as a switch) is tried again. */
  public static EditPlan of(FirmwareFolder folder, List<Change> changes) {
    return of(folder, changes, new KeptPlan());
  }

  static EditPlan of(FirmwareFolder folder, List<Change> changes, KeptPlan kept) {
    PlanBuilder builder = new PlanBuilder(folder, changes, kept);
    builder.run();
    return new EditPlan(folder, builder.after(), changes, builder.outcomes(), builder.files());
  }

  /** A plan of ready-made edits, such as a patch; it has no changes and no outcomes. */
  public static EditPlan ofEdits(FirmwareFolder folder, SortedMap<String, FileEdits> files) {
    TreeMap<String, byte[]> changed = new TreeMap<>();
    files.forEach((path, edits) -> changed.put(path, edits.apply(bytes(folder, path))));
    return new EditPlan(folder, () -> folder.with(changed), List.of(), List.of(), files);
  }

  private static byte[] bytes(FirmwareFolder folder, String path) {
    byte[] bytes = folder.bytesOf(path);
    if (bytes == null) {
      throw new IllegalArgumentException("the folder has no file " + path);
    }
    return bytes;
  }

  /** The changes that were asked for. */
  public List<Change> changes() {
    return changes;
  }

  /** What became of each change, in their order. */
  public List<Outcome> outcomes() {
    return outcomes;
  }

  /** The edits of each file that changes, by path. */
  public SortedMap<String, FileEdits> files() {
    return files;
  }

  /** The folder that the plan was made for. */
  public FirmwareFolder before() {
    return before;
  }

  /** The folder as the plan leaves it, made when it is first asked for. */
  public FirmwareFolder after() {
    FirmwareFolder known = after;
    return known == null ? make() : known;
  }

  private synchronized FirmwareFolder make() {
    if (after == null) {
      after = making.get();
      making = null;
    }
    return after;
  }

  /** The bytes of a header or build-settings file after the plan, changed or not. */
  public byte[] result(String path) {
    return bytes(after(), path).clone();
  }

  /**
   * What the plan makes of some lines of a header or build-settings file: as many lines, without
   * their ends, joined by {@code \n}; empty if the file has fewer.
   *
   * @param first in the file before the plan, counted from 1
   */
  public Optional<String> lines(String path, int first, int count) {
    SourceFile file = before.editable(path);
    if (file == null || first - 1 + count > file.lines().count()) {
      return Optional.empty();
    }
    int from = file.lines().start(first);
    int to = from;
    for (int line = first; line < first + count; line++) {
      to = file.lineEnd(line);
    }
    byte[] now = within(file, from, to);
    return Optional.of(
        new String(now, file.charset()).lines().limit(count).collect(Collectors.joining("\n")));
  }

  private byte[] within(SourceFile file, int from, int to) {
    List<Edit> here = new ArrayList<>();
    FileEdits all = files.get(file.path());
    for (Edit edit : all == null ? List.<Edit>of() : all.edits()) {
      Span span = edit.span();
      if (span.start() >= from && span.end() <= to) {
        here.add(new Edit(new Span(span.start() - from, span.end() - from), edit.replacement()));
      }
    }
    return FileEdits.spliced(Arrays.copyOfRange(file.bytes(), from, to), here);
  }

  /** The plan that restores the original bytes. */
  public EditPlan inverse() {
    TreeMap<String, FileEdits> back = new TreeMap<>();
    files.forEach((path, edits) -> back.put(path, edits.inverse(bytes(before, path))));
    return new EditPlan(after(), () -> before, List.of(), List.of(), back);
  }
}
