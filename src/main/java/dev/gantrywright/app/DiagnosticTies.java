package dev.gantrywright.app;

import dev.gantrywright.build.Diagnostic;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.names.BuildTarget;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Ties diagnostics to the settings and profile values that they are about. */
public final class DiagnosticTies {
  private static final String BOARD = "board.constant";
  private static final String TARGET = "board.target";
  private static final Pattern IDENTIFIER = Pattern.compile("[A-Za-z_][A-Za-z0-9_]{2,}");

  private final Map<String, List<Setting>> byName = new TreeMap<>();
  private final Map<String, List<Setting>> byPlace = new TreeMap<>();
  private final Map<String, List<String>> paths = new TreeMap<>();
  private final Map<String, BuildTarget> targets = new TreeMap<>();

  /**
   * @param names the folder's name map; null where there is none
   */
  public DiagnosticTies(FirmwareFolder folder, NameMap names) {
    for (Setting s : folder.settings()) {
      byName.computeIfAbsent(s.name(), k -> new ArrayList<>()).add(s);
      byPlace.computeIfAbsent(place(s.file(), s.line()), k -> new ArrayList<>()).add(s);
    }
    if (names != null) {
      names.fields().forEach(this::remember);
      names
          .boards()
          .forEach(b -> paths.computeIfAbsent(b.constant(), k -> new ArrayList<>()).add(BOARD));
      names.targets().forEach(t -> targets.put(t.name(), t));
    }
  }

  private void remember(String path, NameEntry entry) {
    if (entry.macro() != null) {
      paths.computeIfAbsent(entry.macro(), k -> new ArrayList<>()).add(path);
    }
  }

  /** The diagnostic with its settings: those on its lines first, then those that it names. */
  public TiedDiagnostic of(Diagnostic d) {
    Map<String, Setting> found = new LinkedHashMap<>();
    at(d.file(), d.line(), found);
    d.notes().forEach(note -> at(note.file(), note.line(), found));
    Matcher m = IDENTIFIER.matcher(d.text());
    while (m.find()) {
      named(m.group(), found);
    }
    d.notes().forEach(note -> mentioned(note.text(), found));
    List<TiedDiagnostic.Tie> ties = new ArrayList<>();
    found.values().forEach(s -> ties.add(tie(s)));
    ties.addAll(targetsIn(d.text()));
    return new TiedDiagnostic(d, ties);
  }

  /** Build targets that the message names: they stand in the build settings, not in a header. */
  private List<TiedDiagnostic.Tie> targetsIn(String text) {
    return IDENTIFIER
        .matcher(text)
        .results()
        .map(m -> targets.get(m.group()))
        .filter(Objects::nonNull)
        .distinct()
        .map(t -> new TiedDiagnostic.Tie(t.name(), t.file(), t.line(), t.name(), List.of(TARGET)))
        .toList();
  }

  private void mentioned(String text, Map<String, Setting> found) {
    Matcher m = IDENTIFIER.matcher(text);
    while (m.find()) {
      named(m.group(), found);
    }
  }

  private void named(String name, Map<String, Setting> found) {
    List<Setting> all = byName.getOrDefault(name, List.of());
    all.stream()
        .filter(Setting::live)
        .findFirst()
        .or(() -> all.stream().findFirst())
        .ifPresent(s -> found.putIfAbsent(s.name(), s));
  }

  /** Compilers print a path as the build gave it; the longest end that fits the folder counts. */
  private void at(String printed, int line, Map<String, Setting> found) {
    String path = printed.replace('\\', '/');
    while (line > 0 && !path.isEmpty()) {
      List<Setting> here = byPlace.get(place(path, line));
      if (here != null) {
        here.forEach(s -> found.putIfAbsent(s.name(), s));
        return;
      }
      int slash = path.indexOf('/');
      path = slash < 0 ? "" : path.substring(slash + 1);
    }
  }

  private TiedDiagnostic.Tie tie(Setting s) {
    return new TiedDiagnostic.Tie(
        s.name(), s.file(), s.line(), s.value(), paths.getOrDefault(s.name(), List.of()));
  }

  private static String place(String file, int line) {
    return file + ":" + line;
  }
}
