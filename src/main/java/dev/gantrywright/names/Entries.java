package dev.gantrywright.names;

import dev.gantrywright.names.Match.Rival;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/** Turns matches into a name map's entries: confidence, meaning, spelling, evidence. */
final class Entries {
  /** A speed or current above these has no bench machine in the field's own unit. */
  private static final double FASTEST_MM_PER_S = 1100;

  private static final double MOST_AMPS = 25;

  private final List<FieldRow> rows;
  private final FolderTexts folder;
  private final Map<String, List<Candidate>> byTemplate = new HashMap<>();
  private final SwitchFamilies families;
  private final MeaningReader meanings;
  private final ChoiceReader choices;
  private final DimsReader dims;
  private final EvidenceText evidence;

  Entries(
      FolderTexts folder,
      WordReader words,
      List<Candidate> candidates,
      SwitchFamilies families,
      List<FieldRow> rows) {
    this.rows = rows;
    this.folder = folder;
    this.families = families;
    this.meanings = new MeaningReader(folder);
    this.choices = new ChoiceReader(folder, words);
    this.dims = new DimsReader(words);
    this.evidence = new EvidenceText(words);
    for (Candidate candidate : candidates) {
      byTemplate.computeIfAbsent(candidate.template(), key -> new ArrayList<>()).add(candidate);
    }
  }

  /** The entries by field path; paths that the user settled are left out. */
  Map<String, NameEntry> of(List<Match> matches, Set<String> settled) {
    Map<String, NameEntry> entries = new LinkedHashMap<>();
    Map<LearnableField, Match> shared = new LinkedHashMap<>();
    for (Match match : matches) {
      if (match.row().shared()) {
        shared.put(match.row().field(), match);
      } else if (!settled.contains(match.row().path())) {
        entries.put(match.row().path(), entry(match, match.row().path()));
      }
    }
    shared.forEach((field, match) -> spread(field, match, entries, settled));
    Map<String, NameEntry> sorted = new LinkedHashMap<>();
    rows.stream()
        .map(FieldRow::path)
        .filter(entries::containsKey)
        .forEach(path -> sorted.put(path, entries.get(path)));
    return sorted;
  }

  /** One macro that serves several axes or ends stands for those that have none of their own. */
  private void spread(
      LearnableField field, Match match, Map<String, NameEntry> entries, Set<String> settled) {
    int axes = match.candidate().dims().get(0).axes();
    List<FieldRow> open = new ArrayList<>();
    boolean any = false;
    for (FieldRow row : rows.stream().filter(one -> one.field() == field).toList()) {
      boolean named = axes == 0 || (axes & row.axis()) != 0;
      NameEntry own = entries.get(row.path());
      any |= own != null && own.sure();
      if (!row.shared()
          && named
          && (own == null || !own.sure() && axes != 0)
          && !settled.contains(row.path())) {
        open.add(row);
      }
    }
    if (axes == 0 && any) {
      return;
    }
    for (FieldRow row : open) {
      NameEntry entry = entry(match, row.path());
      List<String> why = new ArrayList<>(entry.evidence());
      why.add("one value serves several fields");
      entries.put(row.path(), entry.evidence(why));
    }
  }

  private NameEntry entry(Match match, String path) {
    Candidate candidate = match.candidate();
    double confidence = Confidence.of(match.share(), match.margin());
    List<String> why = evidence.of(match);
    NameEntry entry =
        NameEntry.plain(
                candidate.macro(),
                candidate.element(),
                candidate.file(),
                candidate.line(),
                confidence,
                confidence >= Confidence.SURE,
                why)
            .section(candidate.section())
            .others(others(match));
    return spelled(entry, path, match, why);
  }

  /** The user's choice with the meaning and the spelling that its place has for the field. */
  NameEntry chosen(NameEntry choice, FieldRow row, Candidate candidate) {
    Match match = new Match(row, candidate, 0, 1, 0, List.of());
    return spelled(choice, row.path(), match, choice.evidence());
  }

  private static List<OtherName> others(Match match) {
    List<OtherName> others = new ArrayList<>();
    for (Rival rival : match.others()) {
      Candidate other = rival.candidate();
      double share = rival.score() / match.row().most();
      others.add(
          new OtherName(
              other.macro(),
              other.element(),
              other.file(),
              other.line(),
              Confidence.of(share, rival.score() - match.score())));
    }
    return others;
  }

  private NameEntry spelled(NameEntry entry, String path, Match match, List<String> why) {
    Candidate candidate = match.candidate();
    List<Candidate> siblings = byTemplate.getOrDefault(candidate.template(), List.of());
    LearnableField field = match.row().field();
    String last = path.substring(path.lastIndexOf('.') + 1);
    if (last.equals("inverted") || last.equals("directionInverted")) {
      MeaningReader.Found found =
          last.equals("inverted")
              ? meanings.endstop(candidate, siblings)
              : meanings.direction(candidate, siblings);
      return explained(entry.meaning(found.meaning().word(), found.values()), why, found.why());
    }
    if (path.equals("kinematics")) {
      if (candidate.bareSwitch()) {
        return families.kinematics().map(family -> entry.switches(family.switches())).orElse(entry);
      }
      return entry.meaning(null, choices.kinematics(candidate));
    }
    if (path.equals("board.constant") && candidate.bareSwitch()) {
      return families.boards().map(family -> entry.switches(family.switches())).orElse(entry);
    }
    if (path.endsWith("homing.end")) {
      Map<String, String> values = choices.ends(candidate, siblings, dims);
      String meaning = values.containsValue("-1") ? Meaning.SIGN.word() : null;
      boolean known = values.size() == 2;
      return explained(
          entry.meaning(known ? meaning : Meaning.UNKNOWN.word(), values),
          why,
          known
              ? "min is " + values.get("min") + ", max is " + values.get("max")
              : "does not say which end");
    }
    if (path.equals("serial.parity")) {
      return entry.meaning(null, choices.spelledAlike(candidate, List.of("none", "even", "odd")));
    }
    if (last.equals("contact")) {
      return entry.meaning(null, choices.spelledAlike(candidate, List.of("nc", "no")));
    }
    if (last.equals("ic")) {
      Map<String, String> values = choices.drivers(candidate, siblings);
      boolean own =
          values.entrySet().stream().allMatch(pair -> pair.getKey().equals(pair.getValue()));
      return own ? entry : entry.meaning(null, values);
    }
    if (path.equals("serial.port") || path.equals("serial.secondPort")) {
      return port(entry, candidate, why);
    }
    return field.unit() == null ? entry : unit(entry, candidate, siblings, field, why);
  }

  private static NameEntry explained(NameEntry entry, List<String> why, String more) {
    List<String> all = new ArrayList<>(why);
    all.add("meaning: " + more);
    return entry.evidence(all);
  }

  private static NameEntry port(NameEntry entry, Candidate candidate, List<String> why) {
    String comment = Folded.text(candidate.comment());
    boolean usb = comment.contains("usb") && comment.contains("-1");
    return usb
        ? explained(entry.meaning("native USB is -1", Map.of()), why, "comment: -1 is native USB")
        : entry;
  }

  private NameEntry unit(
      NameEntry entry,
      Candidate candidate,
      List<Candidate> siblings,
      LearnableField field,
      List<String> why) {
    String unit = candidate.unit();
    boolean fits = !unit.isEmpty() && Units.factor(field.unit(), unit).isPresent();
    String from = fits ? "its name or comment" : "magnitude";
    if (!fits) {
      unit = byMagnitude(field, siblings);
    }
    boolean told = field.unit().equals("mm/s") || field.unit().equals("A");
    NameEntry named = told && !unit.isEmpty() ? entry.meaning(unit, Map.of()) : entry;
    boolean other = !unit.isEmpty() && !Units.same(unit, field.unit());
    NameEntry done = other ? named.unit(unit) : named;
    return told && !unit.isEmpty() ? explained(done, why, unit + " by " + from) : done;
  }

  private String byMagnitude(LearnableField field, List<Candidate> siblings) {
    double most = 0;
    for (Candidate sibling : siblings) {
      OptionalDouble value = Arithmetic.of(sibling.text(), folder::replacement);
      most = value.isPresent() ? Math.max(most, Math.abs(value.getAsDouble())) : most;
    }
    return switch (field.unit()) {
      case "A" -> most > MOST_AMPS ? "mA" : most > 0 ? "A" : "";
      case "mm/s" -> most > FASTEST_MM_PER_S ? "mm/min" : most > 0 ? "mm/s" : "";
      case "V" -> most > 1000 ? "mV" : "";
      default -> "";
    };
  }
}
