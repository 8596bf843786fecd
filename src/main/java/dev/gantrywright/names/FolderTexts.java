package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.HeaderDocument;
import dev.gantrywright.header.Setting;
import dev.gantrywright.header.State;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A folder's settings as learning looks at them: one a name, each with the texts around it. */
final class FolderTexts {
  /**
   * A setting with the texts around it.
   *
   * @param raw the value's text with its comments
   * @param trailing the comment behind it
   * @param lead the comment above it, or above the run of lines that it stands in
   * @param leadOwner name of the setting that the comment stands directly above; empty for none
   */
  record Placed(Setting setting, String raw, String trailing, String lead, String leadOwner) {
    boolean leadIsOwn() {
      return leadOwner.equals(setting.name());
    }
  }

  private static final Pattern CONDITION =
      Pattern.compile("^[ \\t]*#[ \\t]*(?:el)?if(?:def|ndef)?\\b(.*)$", Pattern.MULTILINE);
  private static final Pattern MARKS = Pattern.compile("^\\s*(/\\*+|//+[/!<]*)\\s?|\\*+/\\s*$");
  private static final Pattern NUMBER = Pattern.compile("\\(?-?(0[xX])?[0-9a-fA-F]+[uUlL]*\\)?");
  private static final Pattern NAME = Pattern.compile("[A-Za-z_]\\w*");

  private final Map<String, Placed> byName = new LinkedHashMap<>();
  private final Map<String, List<Setting>> all = new HashMap<>();
  private final Set<String> referred = new HashSet<>();
  private final Set<String> values = new HashSet<>();
  private final List<String> opening = new ArrayList<>();

  private FolderTexts() {}

  static FolderTexts of(FirmwareFolder folder) {
    FolderTexts texts = new FolderTexts();
    for (HeaderDocument header : folder.headers()) {
      texts.read(header, folder);
    }
    texts.kinOfValues();
    return texts;
  }

  /** Numbers beside one that stands as a value, with the same beginning, are choices too. */
  private void kinOfValues() {
    Map<String, Integer> firsts = new HashMap<>();
    byName.keySet().forEach(name -> firsts.merge(firstWord(name), 1, Integer::sum));
    Setting before = null;
    boolean beforeIsValue = false;
    List<Setting> run = new ArrayList<>();
    for (Placed placed : byName.values()) {
      Setting setting = placed.setting();
      boolean number = NUMBER.matcher(setting.value()).matches();
      boolean next =
          before != null
              && before.file().equals(setting.file())
              && setting.line() == before.line() + 1
              && number
              && first(before.name(), firsts).equals(first(setting.name(), firsts));
      if (!next) {
        close(run, beforeIsValue);
        beforeIsValue = false;
      }
      if (number) {
        run.add(setting);
        beforeIsValue |= values.contains(setting.name());
      }
      before = number ? setting : null;
    }
    close(run, beforeIsValue);
  }

  private void close(List<Setting> run, boolean choices) {
    Set<String> distinct = new HashSet<>();
    run.forEach(setting -> distinct.add(setting.value()));
    if (choices && run.size() > 1 && distinct.size() == run.size()) {
      run.forEach(setting -> values.add(setting.name()));
    }
    run.clear();
  }

  /** The first word of a name, or the first two where most names begin with the same one. */
  private String first(String name, Map<String, Integer> firsts) {
    String one = firstWord(name);
    if (firsts.getOrDefault(one, 0) * 2 <= byName.size()) {
      return one;
    }
    List<String> words = Folded.identifier(name);
    return words.size() > 1 ? one + " " + words.get(1) : one;
  }

  /** What stands before the first underscore or the first change to a capital. */
  private static String firstWord(String name) {
    int end = 1;
    while (end < name.length()
        && name.charAt(end) != '_'
        && !(Character.isUpperCase(name.charAt(end))
            && Character.isLowerCase(name.charAt(end - 1)))) {
      end++;
    }
    return name.substring(0, end);
  }

  private void read(HeaderDocument header, FirmwareFolder folder) {
    String bytes = new String(header.bytes(), StandardCharsets.ISO_8859_1);
    opening.add(bytes.substring(0, Math.min(bytes.length(), 1500)));
    Matcher condition = CONDITION.matcher(bytes);
    while (condition.find()) {
      refer(condition.group(1));
    }
    String lead = "";
    String owner = "";
    int lastLine = -1;
    for (Setting setting : header.settings()) {
      if (setting.kind() == Setting.Kind.FUNCTION) {
        continue;
      }
      if (setting.kind() == Setting.Kind.VALUE && setting.value().indexOf('"') < 0) {
        refer(setting.value());
        values(setting.value());
      }
      int behind =
          Math.max(
              setting.nameSpan().end(),
              setting.kind() == Setting.Kind.FLAG ? 0 : setting.valueSpan().end());
      String trailing = plain(slice(bytes, behind, setting.lineSpan().end()));
      String own = above(setting.comment(), trailing);
      boolean adjacent = setting.line() == lastLine + 1;
      boolean isOwn = !own.isEmpty();
      owner = isOwn ? setting.name() : adjacent ? owner : "";
      lead = isOwn ? own : adjacent ? lead : "";
      lastLine =
          setting.line() + breaks(bytes, setting.lineSpan().start(), setting.lineSpan().end());
      String raw =
          setting.kind() == Setting.Kind.FLAG
              ? ""
              : slice(bytes, setting.valueSpan().start(), setting.valueSpan().end());
      all.computeIfAbsent(setting.name(), key -> new ArrayList<>(1)).add(setting);
      Placed placed = new Placed(setting, raw, trailing, lead, owner);
      Placed before = byName.get(setting.name());
      if (before == null || better(setting, before.setting(), folder)) {
        byName.put(setting.name(), placed);
      }
    }
  }

  /** How many line ends lie in a logical line, its own at the end left out. */
  private static int breaks(String bytes, int from, int to) {
    int breaks = 0;
    for (int i = Math.max(0, from); i < to - 1; i++) {
      char c = bytes.charAt(i);
      boolean pair = c == '\r' && bytes.charAt(i + 1) == '\n';
      breaks += (c == '\n' || c == '\r' && !pair) ? 1 : 0;
    }
    return breaks;
  }

  private void refer(String text) {
    if (text.isEmpty()) {
      return;
    }
    Matcher names = NAME.matcher(text);
    while (names.find()) {
      referred.add(names.group());
    }
  }

  /** Names that stand alone as a value, or as one part of a list. */
  private void values(String text) {
    int start = 0;
    for (int i = 0; i <= text.length(); i++) {
      if (i == text.length() || "{},()".indexOf(text.charAt(i)) >= 0) {
        String name = text.substring(start, i).strip();
        if (!name.isEmpty() && !Character.isDigit(name.charAt(0)) && NAME.matcher(name).matches()) {
          values.add(name);
        }
        start = i + 1;
      }
    }
  }

  /** The definition in force decides; failing that one that may be, and one that is switched on. */
  private static boolean better(Setting now, Setting before, FirmwareFolder folder) {
    return rank(now) > rank(before)
        || (rank(now) == rank(before)
            && rank(now) == 5
            && folder
                .live(now.name())
                .filter(live -> live.file().equals(now.file()) && live.line() == now.line())
                .isPresent());
  }

  private static int rank(Setting setting) {
    int place = setting.state() == State.LIVE ? 2 : setting.state() == State.OPEN ? 1 : 0;
    return place + (setting.on() ? 3 : 0);
  }

  private static String slice(String bytes, int from, int to) {
    return from >= 0 && to > from && to <= bytes.length() ? bytes.substring(from, to) : "";
  }

  private static String plain(String comment) {
    return comment.isBlank() ? "" : MARKS.matcher(comment).replaceAll("").strip();
  }

  /** The part of a setting's comment that stands above it. */
  private static String above(String comment, String trailing) {
    String text = comment.strip();
    if (trailing.isEmpty() || text.equals(trailing)) {
      return trailing.isEmpty() ? text : "";
    }
    List<String> whole = Folded.words(text);
    List<String> behind = Folded.words(trailing);
    if (whole.size() <= behind.size()) {
      return "";
    }
    int cut = text.lastIndexOf('\n');
    return cut < 0 ? "" : text.substring(0, cut).strip();
  }

  /** One setting a name: the one that decides. */
  Iterable<Placed> settings() {
    return byName.values();
  }

  Optional<Placed> named(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /** Every setting of a name. */
  List<Setting> every(String name) {
    return all.getOrDefault(name, List.of());
  }

  int size() {
    return byName.size();
  }

  /** Whether another value or a condition speaks of the name. */
  boolean referred(String name) {
    return referred.contains(name);
  }

  /** Whether the name stands alone as the value of another setting. */
  boolean standsAsValue(String name) {
    return values.contains(name);
  }

  /** The replacement of a name; empty where the folder has none. */
  Optional<String> replacement(String name) {
    Placed placed = byName.get(name);
    return placed == null || placed.setting().value().isEmpty()
        ? Optional.empty()
        : Optional.of(placed.setting().value());
  }

  /** The first text of each header, where folders say in which order their lists are. */
  List<String> openings() {
    return opening;
  }
}
