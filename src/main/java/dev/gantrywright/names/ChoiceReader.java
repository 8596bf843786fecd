package dev.gantrywright.names;

import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Works out which of the folder's words stands for which choice of a profile field. */
final class ChoiceReader {
  private static final Pattern IC =
      Pattern.compile(
          "(?i)(?<![a-z0-9])((?:tmc|a|drv|lv|tb|st|thb|mp|l)\\d{3,5}[a-z]{0,3})(?![a-z0-9])");

  private final FolderTexts folder;
  private final WordReader words;
  private final Alternatives alternatives;

  ChoiceReader(FolderTexts folder, WordReader words) {
    this.folder = folder;
    this.words = words;
    this.alternatives = new Alternatives(folder);
  }

  /** Profile value to folder text for the kinematics. */
  Map<String, String> kinematics(Candidate candidate) {
    List<String> choices = List.of("corexy", "delta", "cartesian");
    return byConcept(alternatives.of(candidate, List.of()), choices, "cartesian");
  }

  /** Profile value to folder text for a choice whose words are its own spelling: parity. */
  Map<String, String> spelledAlike(Candidate candidate, List<String> choices) {
    Map<String, String> values = new LinkedHashMap<>();
    alternatives
        .of(candidate, List.of())
        .forEach(
            (text, said) -> {
              for (String choice : choices) {
                boolean told = (" " + said + " ").matches("(?s).*\\b" + choice + "\\b.*");
                if (told) {
                  values.putIfAbsent(choice, text);
                }
              }
            });
    return values;
  }

  /** Driver IC to folder text, where that is not the IC's own name. */
  Map<String, String> drivers(Candidate candidate, List<Candidate> siblings) {
    Map<String, String> values = new LinkedHashMap<>();
    alternatives
        .of(candidate, siblings)
        .forEach(
            (text, said) -> {
              Matcher name = IC.matcher(text.replace('_', ' '));
              Matcher told = IC.matcher(said);
              boolean found = name.find();
              if (found || told.find()) {
                String ic =
                    (found ? name.group(1) : told.group(1)).toUpperCase(java.util.Locale.ROOT);
                values.putIfAbsent(ic, text);
              }
            });
    return values;
  }

  private Map<String, String> byConcept(
      Map<String, String> said, List<String> choices, String remaining) {
    Map<String, String> values = new LinkedHashMap<>();
    Set<String> used = new HashSet<>();
    for (double least : new double[] {1, 0.5}) {
      said.forEach(
          (text, words) -> {
            String best = null;
            for (String choice : choices) {
              boolean speaks = strength(words, choice) >= least;
              best = speaks && best == null ? choice : best;
            }
            if (best != null && !used.contains(text) && !values.containsKey(best)) {
              values.put(best, text);
              used.add(text);
            }
          });
    }
    List<String> left = new ArrayList<>(said.keySet());
    left.removeAll(used);
    if (!values.containsKey(remaining) && left.size() == 1 && values.size() >= 1) {
      values.put(remaining, left.get(0));
    }
    return values;
  }

  private double strength(String text, String concept) {
    int number = words.trade().concept(concept);
    double best = 0;
    for (String part : text.split("\\|")) {
      List<Word> read = new ArrayList<>(words.comment(part));
      read.addAll(words.identifier(part.strip().replace(' ', '_')));
      for (Word word : read) {
        for (Hit hit : word.hits()) {
          best = hit.concept() == number ? Math.max(best, hit.strength()) : best;
        }
      }
    }
    return best;
  }

  /** The values by which a homing end is spelled: {@code min} and {@code max} to folder text. */
  Map<String, String> ends(Candidate candidate, List<Candidate> siblings, DimsReader dims) {
    Map<String, String> values = new LinkedHashMap<>();
    if (candidate.bareSwitch()) {
      int named = dims.read(candidate.words(), 1).end();
      values.put("max", named == Dims.LOWER ? "off" : "on");
      values.put("min", named == Dims.LOWER ? "on" : "off");
      return values;
    }
    String now = Parens.off(candidate.text());
    for (Map.Entry<String, String> one : alternatives.of(candidate, siblings).entrySet()) {
      int end = dims.read(words.comment(one.getValue()), 1).end();
      int own = dims.read(words.identifier(one.getKey()), 1).end();
      int which = own != 0 ? own : end;
      boolean plainNumber = one.getKey().matches("-?\\d+");
      if (which != 0 && !(plainNumber && one.getValue().isBlank())) {
        values.putIfAbsent(which == Dims.LOWER ? "min" : "max", one.getKey());
      }
    }
    if (values.size() == 2) {
      return values;
    }
    if (now.matches("[A-Za-z_]\\w*") && Truth.of(now).isEmpty()) {
      values.forEach((end, text) -> {});
      return values;
    }
    values.clear();
    boolean signs =
        now.equals("-1")
            || siblings.stream().anyMatch(sibling -> Parens.off(sibling.text()).equals("-1"))
            || Clauses.of(candidate.comment()).containsKey("-1");
    if (signs) {
      values.put("min", "-1");
      values.put("max", "1");
      return values;
    }
    int named = dims.read(candidate.words(), 1).end();
    Truth.like(now.isEmpty() ? "true" : now, true, false)
        .ifPresent(
            yes -> {
              String no = Truth.like(now, false, false).orElse("0");
              if (named != 0) {
                values.put(named == Dims.UPPER ? "max" : "min", yes);
                values.put(named == Dims.UPPER ? "min" : "max", no);
              }
            });
    return values;
  }

  /** The replacement of a name in the folder. */
  java.util.Optional<String> replacement(String name) {
    return folder.replacement(name);
  }
}
