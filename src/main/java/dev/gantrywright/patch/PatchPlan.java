package dev.gantrywright.patch;

import dev.gantrywright.header.Change;
import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FileEdits;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.HeaderDocument;
import dev.gantrywright.header.IniDocument;
import dev.gantrywright.header.Outcome;
import dev.gantrywright.header.UnifiedDiffReader;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What is to be written into a firmware folder, line by line with the reason for each, and what is
 * not, with the reason for that. A value that the folder gives already makes no edit.
 */
public final class PatchPlan {
  private final FirmwareFolder folder;
  private final String profileName;
  private final EditPlan edits;
  private final List<PlannedLine> lines;
  private final List<Refusal> refusals;
  private final List<String> unchanged;

  private PatchPlan(
      FirmwareFolder folder,
      String profileName,
      EditPlan edits,
      List<PlannedLine> lines,
      List<Refusal> refusals,
      List<String> unchanged) {
    this.folder = folder;
    this.profileName = profileName;
    this.edits = edits;
    this.lines = List.copyOf(lines);
    this.refusals = List.copyOf(refusals);
    this.unchanged = List.copyOf(unchanged);
  }

  /** The plan that carries a profile's values into a folder by its name map. */
  public static PatchPlan of(PrinterProfile profile, NameMap map, FirmwareFolder folder) {
    return of(profile, map, List.of(), folder);
  }

  /** The same with changes given by hand beside it. */
  public static PatchPlan of(
      PrinterProfile profile, NameMap map, List<HandChange> changes, FirmwareFolder folder) {
    ProfileWishes asked = ProfileWishes.of(profile, map, new MappedPlaces(folder));
    List<Wish> wishes = new ArrayList<>(asked.wishes());
    changes.forEach(change -> wishes.add(change.wish(folder)));
    String name = profile.name() == null ? "" : profile.name();
    return of(
        folder, name, wishes, asked.refusals(), asked.unchanged(), all -> EditPlan.of(folder, all));
  }

  /** The plan of what a profile asks, its edits worked out by a planner. */
  static PatchPlan of(
      FirmwareFolder folder,
      String profileName,
      ProfileWishes asked,
      Function<List<Change>, EditPlan> planner) {
    return of(folder, profileName, asked.wishes(), asked.refusals(), asked.unchanged(), planner);
  }

  /** The plan of changes given by hand. */
  public static PatchPlan of(List<HandChange> changes, FirmwareFolder folder) {
    List<Wish> wishes = changes.stream().map(change -> change.wish(folder)).toList();
    return of(folder, "", wishes, List.of(), List.of(), all -> EditPlan.of(folder, all));
  }

  /**
   * The plan that a unified diff describes.
   *
   * @param cause what each line says of why it changes
   * @param back take the diff out of a folder that has it
   * @throws IllegalArgumentException with one clear line where the diff does not fit
   */
  public static PatchPlan ofDiff(byte[] diff, String cause, boolean back, FirmwareFolder folder) {
    EditPlan edits =
        back ? UnifiedDiffReader.readBack(folder, diff) : UnifiedDiffReader.read(folder, diff);
    List<PlannedLine> lines = new ArrayList<>();
    edits
        .files()
        .forEach(
            (path, file) -> lines.addAll(DiffLines.of(bytes(folder, path), path, file, cause)));
    return new PatchPlan(folder, "", edits, lines, List.of(), List.of());
  }

  private static PatchPlan of(
      FirmwareFolder folder,
      String profileName,
      List<Wish> wishes,
      List<Refusal> refusedBefore,
      List<String> unchangedBefore,
      Function<List<Change>, EditPlan> planner) {
    List<Change> changes = new ArrayList<>();
    List<Wish> owners = new ArrayList<>();
    for (Wish wish : wishes) {
      for (Change change : wish.changes()) {
        changes.add(change);
        owners.add(wish);
      }
    }
    EditPlan edits = planner.apply(changes);
    Map<String, PlannedLine> lines = new LinkedHashMap<>();
    Map<Wish, Refusal> refused = new LinkedHashMap<>();
    List<String> unchanged = new ArrayList<>(unchangedBefore);
    for (int i = 0; i < owners.size(); i++) {
      Wish wish = owners.get(i);
      Outcome outcome = edits.outcomes().get(i);
      if (outcome instanceof Outcome.Applied applied) {
        String place = applied.file() + ":" + applied.line();
        lines.merge(place, line(applied, wish), PatchPlan::both);
      } else if (outcome instanceof Outcome.Refused no) {
        refused.putIfAbsent(
            wish, new Refusal(wish.path(), wish.macro(), wish.value(), no.reason()));
      } else if (wish.changes().size() == 1) {
        unchanged.add(wish.path().isEmpty() ? wish.value() : wish.path());
      }
    }
    List<Refusal> refusals = new ArrayList<>(refusedBefore);
    refusals.addAll(refused.values());
    List<PlannedLine> sorted = new ArrayList<>();
    lines.values().forEach(line -> sorted.add(whole(line, edits)));
    sorted.sort(
        java.util.Comparator.comparing(PlannedLine::file).thenComparingInt(PlannedLine::line));
    return new PatchPlan(folder, profileName, edits, sorted, refusals, unchanged);
  }

  private static PlannedLine line(Outcome.Applied applied, Wish wish) {
    return new PlannedLine(
        applied.file(),
        applied.line(),
        applied.oldLine(),
        applied.newLine(),
        wish.macro(),
        wish.path(),
        wish.value(),
        applied.note());
  }

  /** Two changes of one line: several elements of a list, or a switch with its value. */
  private static PlannedLine both(PlannedLine first, PlannedLine second) {
    boolean same = first.cause().equals(second.cause());
    boolean byPath = !first.path().isEmpty() && !second.path().isEmpty();
    String paths = byPath ? first.path() + ", " + second.path() : first.path();
    return new PlannedLine(
        first.file(),
        first.line(),
        first.before(),
        second.after(),
        first.macro(),
        same ? first.path() : paths,
        same ? first.value() : first.value() + ", " + second.value(),
        first.note().isEmpty() ? second.note() : first.note());
  }

  /** The line with what all its changes together make of it. */
  private static PlannedLine whole(PlannedLine line, EditPlan edits) {
    if (!line.value().contains(", ")) {
      return line;
    }
    int rows = (int) line.before().lines().count();
    Optional<String> now = edits.lines(line.file(), line.line(), rows);
    if (now.isEmpty()) {
      return line;
    }
    return new PlannedLine(
        line.file(),
        line.line(),
        line.before(),
        now.get(),
        line.macro(),
        line.path(),
        line.value(),
        line.note());
  }

  private static byte[] bytes(FirmwareFolder folder, String path) {
    return folder
        .header(path)
        .map(HeaderDocument::bytes)
        .orElseGet(
            () ->
                folder.buildSettings().stream()
                    .filter(ini -> ini.path().equals(path))
                    .findFirst()
                    .map(IniDocument::bytes)
                    .orElseThrow());
  }

  /** The folder that the plan was made for. */
  public FirmwareFolder folder() {
    return folder;
  }

  /** The folder as the plan leaves it. */
  public FirmwareFolder patched() {
    return edits.after();
  }

  /** The byte edits, with their inverse. */
  public EditPlan edits() {
    return edits;
  }

  /** The lines that change, by file and line. */
  public List<PlannedLine> lines() {
    return lines;
  }

  /** What is not written, and why. */
  public List<Refusal> refusals() {
    return refusals;
  }

  /** The profile paths whose value the folder gives already. */
  public List<String> unchanged() {
    return unchanged;
  }

  /** The bytes of each changed file as they stand, by path, copied at each call. */
  public Map<String, byte[]> before() {
    return changed(path -> bytes(folder, path));
  }

  /** The bytes of each changed file as the plan leaves them, by path, copied at each call. */
  public Map<String, byte[]> after() {
    return changed(edits::result);
  }

  private Map<String, byte[]> changed(Function<String, byte[]> bytes) {
    Map<String, byte[]> out = new TreeMap<>();
    edits.files().keySet().forEach(path -> out.put(path, bytes.apply(path)));
    return out;
  }

  /** The plan as a unified diff; empty where nothing changes. */
  public byte[] diff() {
    return UnifiedDiff.of(before(), after());
  }

  Manifest manifest(List<String> leftOut) {
    List<Manifest.ChangedFile> files = new ArrayList<>();
    for (FileEdits file : edits.files().values()) {
      files.add(
          new Manifest.ChangedFile(
              file.path(),
              file.sha256(),
              Sha256.of(edits.result(file.path())),
              lines.stream().filter(line -> line.file().equals(file.path())).toList()));
    }
    String source = folder.root().toAbsolutePath().normalize().getFileName().toString();
    return new Manifest(Manifest.FORMAT, source, profileName, files, leftOut);
  }
}
