package dev.gantrywright.names;

import dev.gantrywright.header.Setting;
import dev.gantrywright.names.FolderTexts.Placed;
import dev.gantrywright.names.TradeWords.Hit;
import dev.gantrywright.names.WordReader.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Turns a folder's settings and keys into candidates. */
final class CandidateReader {
  private static final double TRAILING = 0.6;
  private static final double LEAD = 0.5;
  private static final double LEAD_OF_RUN = 0.3;
  private static final double SECTION = 0.4;
  private static final double FILE = 0.2;
  private static final double VALUE = 0.3;
  private static final double DIMS_IN_COMMENT = 0.5;
  private static final int FEWEST_FOR_PREFIX = 12;

  private final WordReader words;
  private final DimsReader dims;
  private final PartDims parts;
  private final FolderTexts folder;
  private final Set<String> prefixes = new HashSet<>();
  private final Map<String, String> templates = new HashMap<>();
  private final Map<String, float[]> values = new HashMap<>();
  private final float[] silent;
  private Twins twins;
  private final Map<String, float[]> heard = new HashMap<>();
  private final Map<String, String> units = new HashMap<>();
  private final Map<String, float[]> files = new HashMap<>();

  CandidateReader(WordReader words, FolderTexts folder) {
    this.words = words;
    this.silent = new float[words.trade().size()];
    this.dims = new DimsReader(words);
    this.folder = folder;
    this.parts = new PartDims(words, dims, folder);
  }

  List<Candidate> read(List<KeyText> keys) {
    Map<String, List<Word>> names = new HashMap<>();
    Map<String, Integer> count = new HashMap<>();
    List<String> all = new ArrayList<>();
    folder.settings().forEach(placed -> all.add(placed.setting().name()));
    keys.forEach(key -> all.add(key.key()));
    twins = new Twins(words, all);
    for (Placed placed : folder.settings()) {
      String name = placed.setting().name();
      List<Word> read = twins.read(name);
      names.put(name, read);
      new HashSet<>(read.stream().map(Word::text).toList())
          .forEach(word -> count.merge(word, 1, Integer::sum));
    }
    count.forEach(
        (word, times) -> {
          boolean most = names.size() >= FEWEST_FOR_PREFIX && times > names.size() * 0.6;
          if (most && words.axes().of(word) == 0) {
            prefixes.add(word);
          }
        });
    List<Candidate> candidates = new ArrayList<>();
    for (Placed placed : folder.settings()) {
      setting(placed, names.get(placed.setting().name()), candidates);
    }
    keys.forEach(key -> key(key, twins.read(key.key()), candidates));
    return new SiblingComments(words.trade()).lend(candidates, this::heard);
  }

  private void setting(Placed placed, List<Word> name, List<Candidate> out) {
    Setting setting = placed.setting();
    List<Word> own = withoutPrefix(name);
    ListParts list = ListParts.of(placed.raw());
    String comment = placed.trailing() + "\n" + placed.lead();
    String template = template(name);
    float[] around = around(placed, template);
    if (!list.several() || list.parts().size() < 2) {
      Dims named = dims.read(own, 1);
      Dims told =
          dims.read(words.comment(placed.trailing()), DIMS_IN_COMMENT)
              .or(placed.leadIsOwn() ? dims.read(words.comment(placed.lead()), 0.4) : Dims.NONE)
              .or(dims.read(words.comment(setting.section()), 0.4));
      String text = list.several() ? list.parts().get(0).text() : setting.value();
      out.add(
          candidate(
              placed,
              null,
              1,
              text,
              own,
              around,
              List.of(named.or(told)),
              unit(own, placed, null),
              comment,
              template));
      return;
    }
    int index = 0;
    for (PartDims.Part part : parts.of(placed, own, list)) {
      List<Word> all = new ArrayList<>(own);
      all.addAll(part.words());
      String unit = unit(part.words(), placed, part.note());
      out.add(
          candidate(
              placed,
              index,
              list.parts().size(),
              list.parts().get(index).text(),
              all,
              around,
              part.dims(),
              unit.isEmpty() ? unit(own, placed, null) : unit,
              comment,
              template + "[]" + part.key()));
      index++;
    }
  }

  private Candidate candidate(
      Placed placed,
      Integer element,
      int count,
      String text,
      List<Word> own,
      float[] around,
      List<Dims> ways,
      String unit,
      String comment,
      String template) {
    Setting setting = placed.setting();
    float[] spoken = strengths(own);
    float[] all = or(or(spoken.clone(), around, 1), value(text), VALUE);
    return new Candidate(
        setting.name(),
        element,
        count,
        setting.file(),
        setting.line(),
        null,
        setting,
        text,
        own,
        spoken,
        all,
        ways,
        unit,
        comment.strip(),
        template);
  }

  private void key(KeyText key, List<Word> own, List<Candidate> out) {
    float[] spoken = strengths(own);
    float[] all = spoken.clone();
    or(all, heard(key.comment()), TRAILING);
    or(all, heard(key.section()), key.define() ? 0.05 : SECTION);
    or(all, value(key.value()), VALUE);
    Dims named =
        dims.read(own, 1)
            .or(dims.read(words.comment(key.comment()), DIMS_IN_COMMENT))
            .or(dims.read(words.identifier(key.section()), 0.8));
    String unit = UnitReader.ofComment(key.comment());
    out.add(
        new Candidate(
            key.key(),
            null,
            1,
            key.file(),
            key.line(),
            key.section(),
            null,
            key.value(),
            own,
            spoken,
            all,
            List.of(named),
            unit.isEmpty() ? UnitReader.ofName(own) : unit,
            key.comment(),
            "=" + key.section() + "=" + template(own)));
  }

  private String unit(List<Word> own, Placed placed, String note) {
    if (note != null) {
      String noted = UnitReader.ofComment(note);
      return noted.isEmpty() ? UnitReader.ofName(own) : noted;
    }
    String named = UnitReader.ofName(own);
    boolean plainLength = named.equals("mm");
    if (!named.isEmpty() && !plainLength) {
      return named;
    }
    for (String text : List.of(placed.trailing(), placed.lead(), placed.setting().unit())) {
      String told = units.computeIfAbsent(text, UnitReader::ofComment);
      if (!told.isEmpty()) {
        return told;
      }
    }
    return named;
  }

  private List<Word> withoutPrefix(List<Word> name) {
    if (prefixes.isEmpty() || name.size() < 2) {
      return name;
    }
    List<Word> rest = new ArrayList<>(name);
    while (rest.size() > 1 && prefixes.contains(rest.get(0).text())) {
      rest.remove(0);
    }
    return rest;
  }

  private float[] around(Placed placed, String template) {
    float[] all = new float[words.trade().size()];
    or(all, heard(placed.trailing()), TRAILING);
    or(all, heard(placed.lead()), sameRun(placed, template) ? LEAD : LEAD_OF_RUN);
    or(all, heard(placed.setting().section()), SECTION);
    or(all, files.computeIfAbsent(placed.setting().file(), this::heardInFile), FILE);
    return all;
  }

  /** Whether the comment above speaks of this setting, or of one that is its sibling. */
  private boolean sameRun(Placed placed, String template) {
    return placed.leadIsOwn()
        || !placed.leadOwner().isEmpty()
            && templates
                .computeIfAbsent(placed.leadOwner(), name -> template(twins.read(name)))
                .equals(template);
  }

  private float[] heardInFile(String file) {
    String name = file.substring(file.lastIndexOf('/') + 1);
    return heard(name.replaceAll("\\.\\w+$", ""));
  }

  private float[] heard(String text) {
    return heard.computeIfAbsent(text, key -> strengths(words.comment(key)));
  }

  private static boolean identifier(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c == '_' || c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
      if (!letter && (i == 0 || c < '0' || c > '9')) {
        return false;
      }
    }
    return !text.isEmpty();
  }

  /** What an identifier that stands as a value speaks of. */
  private float[] value(String text) {
    boolean speaks = identifier(text) || text.startsWith("\"") && text.length() < 40;
    return speaks ? values.computeIfAbsent(text, key -> strengths(words.identifier(key))) : silent;
  }

  private float[] strengths(List<Word> list) {
    float[] strengths = new float[words.trade().size()];
    for (Word word : list) {
      for (Hit hit : word.hits()) {
        strengths[hit.concept()] = Math.max(strengths[hit.concept()], (float) hit.strength());
      }
    }
    return strengths;
  }

  /** Adds evidence of another source: two halves make three quarters. */
  private static float[] or(float[] into, float[] more, double factor) {
    for (int i = 0; i < into.length; i++) {
      if (more[i] != 0) {
        into[i] = (float) (1 - (1 - into[i]) * (1 - more[i] * factor));
      }
    }
    return into;
  }

  /** The name with axis, end and heater left open. */
  private String template(List<Word> name) {
    StringBuilder key = new StringBuilder();
    for (Word word : name) {
      key.append(
          dims.isAxis(word)
              ? "*"
              : dims.isEnd(word) ? "%" : dims.isHeater(word) ? "$" : word.text());
      key.append('_');
    }
    return key.toString();
  }
}
