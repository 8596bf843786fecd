package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds the build targets among the sections of the build settings. */
final class TargetLister {
  private final List<KeyText> keys;
  private final McuNames mcus;
  private final Map<String, List<KeyText>> sections = new LinkedHashMap<>();

  TargetLister(List<KeyText> keys, McuNames mcus) {
    this.keys = keys;
    this.mcus = mcus;
    for (KeyText key : keys) {
      sections.computeIfAbsent(key.section(), name -> new ArrayList<>()).add(key);
    }
  }

  /** The key that chooses the default target: its value names a section. */
  Optional<KeyText> chooser() {
    KeyText best = null;
    for (KeyText key : keys) {
      if (key.define() || key.value().isEmpty() || key.value().indexOf('\n') >= 0) {
        continue;
      }
      boolean names =
          sections.keySet().stream()
              .anyMatch(section -> !section.equals(key.section()) && names(key.value(), section));
      if (names && (best == null || score(key) > score(best))) {
        best = key;
      }
    }
    return Optional.ofNullable(best);
  }

  private static int score(KeyText key) {
    String text = (key.section() + " " + key.key()).toLowerCase(java.util.Locale.ROOT);
    return (text.matches(".*(default|target|env|ziel|cible).*") ? 2 : 0)
        + (text.contains("extend") || text.contains("inherit") || text.contains("base") ? -3 : 0);
  }

  private static boolean names(String value, String section) {
    return section.equals(value) || (!section.equals(value) && shortName(section).equals(value));
  }

  /**
   * A section's name without the word that all targets share, {@code fulmar} of {@code env:fulmar}.
   */
  private static String shortName(String section) {
    String[] parts = section.strip().split("[\\s:./]+");
    return parts.length > 1
        ? section.substring(section.lastIndexOf(parts[parts.length - 1]))
        : section;
  }

  private static String family(String section) {
    String name = shortName(section);
    return section.substring(0, section.length() - name.length());
  }

  /** The targets, without the boards that fit them. */
  List<BuildTarget> list() {
    Optional<KeyText> chooser = chooser();
    String chosen = chooser.map(KeyText::value).orElse("");
    String family =
        sections.keySet().stream()
            .filter(section -> names(chosen, section))
            .map(TargetLister::family)
            .findFirst()
            .orElse(null);
    List<BuildTarget> targets = new ArrayList<>();
    sections.forEach(
        (section, list) -> {
          Optional<String> mcu = mcu(list);
          boolean kin = family != null && !family.isEmpty() && family(section).equals(family);
          boolean alone =
              mcu.isPresent() && list.stream().noneMatch(chooser.stream().toList()::contains);
          boolean byName = family != null && family.isEmpty() && names(chosen, section);
          boolean global = section.isEmpty();
          if (!global && (kin || byName || (alone && (family == null || family.isEmpty())))) {
            boolean whole = section.equals(chosen) || family == null || family.isEmpty();
            targets.add(target(section, whole ? section : shortName(section), list, mcu, chosen));
          }
        });
    return noted(targets);
  }

  private Optional<String> mcu(List<KeyText> list) {
    for (KeyText key : list) {
      Optional<String> found = mcus.find(key.value());
      if (found.isPresent()) {
        return found;
      }
    }
    return list.stream().map(key -> mcus.find(key.comment())).flatMap(Optional::stream).findFirst();
  }

  private static BuildTarget target(
      String section, String name, List<KeyText> list, Optional<String> mcu, String chosen) {
    KeyText first = list.get(0);
    String comment =
        list.stream().map(KeyText::comment).filter(text -> !text.isBlank()).findFirst().orElse("");
    return new BuildTarget(
        name,
        section,
        mcu.orElse(null),
        comment.strip(),
        first.file(),
        first.line(),
        List.of(),
        name.equals(chosen),
        List.of());
  }

  private static List<BuildTarget> noted(List<BuildTarget> targets) {
    List<String> names = targets.stream().map(BuildTarget::name).toList();
    List<BuildTarget> out = new ArrayList<>();
    for (BuildTarget target : targets) {
      List<String> notes = NearMiss.notes(target.name(), names);
      out.add(
          new BuildTarget(
              target.name(),
              target.section(),
              target.mcu(),
              target.comment(),
              target.file(),
              target.line(),
              List.of(),
              target.chosen(),
              notes));
    }
    return out;
  }

  /** Sections of targets that are not the chosen one: their keys carry no profile value. */
  boolean otherTarget(KeyText key, List<BuildTarget> targets) {
    return targets.stream()
        .anyMatch(target -> target.section().equals(key.section()) && !target.chosen());
  }

  boolean inTarget(KeyText key, List<BuildTarget> targets) {
    return targets.stream().anyMatch(target -> target.section().equals(key.section()));
  }
}
