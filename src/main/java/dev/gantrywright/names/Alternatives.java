package dev.gantrywright.names;

import dev.gantrywright.header.Setting;
import dev.gantrywright.names.FolderTexts.Placed;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The values that a setting could take, each with what the folder says of it. */
final class Alternatives {
  private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*");

  private final FolderTexts folder;

  Alternatives(FolderTexts folder) {
    this.folder = folder;
  }

  /**
   * The constants that could stand in a candidate's place, with what is said of each: words of its
   * name and its comment.
   */
  Map<String, String> of(Candidate candidate, List<Candidate> siblings) {
    Set<String> names = new LinkedHashSet<>();
    String now = Parens.off(candidate.text());
    if (candidate.setting() != null) {
      candidate.setting().choices().forEach(choice -> add(choice, names));
    }
    add(now, names);
    siblings.forEach(sibling -> add(Parens.off(sibling.text()), names));
    Matcher told = NAME.matcher(candidate.comment());
    while (told.find()) {
      if (folder.named(told.group()).isPresent() && !told.group().equals(candidate.macro())) {
        add(told.group(), names);
      }
    }
    if (names.stream().anyMatch(name -> folder.named(name).isPresent())) {
      family(now, names);
    }
    Map<String, String> said = new LinkedHashMap<>();
    Map<String, String> clauses = Clauses.of(candidate.comment());
    for (String name : names) {
      String clause = clauses.getOrDefault(Folded.text(name), "");
      String own = folder.named(name).map(Placed::trailing).orElse("");
      String words = String.join(" ", Folded.identifier(name));
      said.put(name, words + " | " + own + " | " + clause);
    }
    clauses.forEach(
        (value, clause) -> {
          if (value.matches("-?\\d+") && !names.contains(value) && now.matches("-?\\d+")) {
            said.put(value, clause);
          }
        });
    return said;
  }

  /** Constants beside the present one in file and beginning. */
  private void family(String now, Set<String> names) {
    Placed here = folder.named(now).orElse(null);
    if (here == null) {
      return;
    }
    List<String> words = Folded.identifier(now);
    String start = now.length() > 2 ? now.substring(0, firstWord(now, words)) : now;
    for (Placed placed : folder.settings()) {
      Setting setting = placed.setting();
      boolean near =
          setting.file().equals(here.setting().file())
              && Math.abs(setting.line() - here.setting().line()) <= 12;
      boolean like = setting.name().startsWith(start) && words.size() > 1;
      boolean constant =
          Arithmetic.of(setting.value()).isPresent() && folder.referred(setting.name());
      boolean neighbour = near && Math.abs(setting.line() - here.setting().line()) <= 3;
      if (constant && (like && near || like && folder.referred(setting.name()) || neighbour)) {
        names.add(setting.name());
      } else if (like && near && Arithmetic.of(setting.value()).isPresent()) {
        names.add(setting.name());
      }
    }
  }

  private static int firstWord(String name, List<String> words) {
    int at = name.toLowerCase(java.util.Locale.ROOT).indexOf(words.get(0));
    return Math.max(1, at + words.get(0).length());
  }

  private static void add(String text, Set<String> names) {
    String plain = Parens.off(text);
    if (NAME.matcher(plain).matches() || plain.matches("-?\\d{1,4}")) {
      names.add(plain);
    }
  }
}
