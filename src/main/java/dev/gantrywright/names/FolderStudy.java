package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A firmware folder as learning has read it: proposes a name map, and says of any place that the
 * user picks what it would mean for a field.
 */
public final class FolderStudy {
  private static final String CONTACT = "endstops.*.contact";

  private final FirmwareFolder folder;
  private final LearningWatch watch;
  private final List<FieldRow> rows;
  private final McuNames mcus;
  private final FolderTexts texts;
  private final List<BuildTarget> targets;
  private final List<Candidate> candidates;
  private final Extra extra = new Extra();
  private final ConceptIndex index;
  private final Scorer scorer;
  private final Entries entries;
  private final PlaceSearch search;

  FolderStudy(
      FirmwareFolder folder,
      TradeWords trade,
      List<LearnableField> fields,
      McuNames mcus,
      LearningWatch watch) {
    this.folder = folder;
    this.watch = watch;
    this.mcus = mcus;
    watch.step(0);
    texts = FolderTexts.of(folder);
    watch.step(0.2);
    List<KeyText> keys = KeyReader.read(folder);
    WordReader words = new WordReader(trade, axes(keys));
    rows = FieldRow.all(fields, words.axes());
    TargetLister targetLister = new TargetLister(keys, mcus);
    targets = targetLister.list();
    candidates = new CandidateReader(words, texts).read(usable(keys, targetLister, targets));
    watch.step(0.5);
    targetLister.chooser().ifPresent(key -> extra.add("board.target", key.key(), 4));
    SwitchFamilies families = new SwitchFamilies(texts, words);
    families.boards().ifPresent(family -> extra.add("board.constant", family.present(), 1.5));
    families.kinematics().ifPresent(family -> extra.add("kinematics", family.present(), 2.5));
    index = new ConceptIndex(candidates, trade.size());
    scorer =
        new Scorer(
            words, new ValueShape(texts, mcus, candidates.size()), fields, candidates.size());
    entries = new Entries(texts, words, candidates, families, rows);
    search = new PlaceSearch(candidates);
    watch.step(0.6);
  }

  /** The folder that was read. */
  public FirmwareFolder folder() {
    return folder;
  }

  /**
   * The name map as far as it can be learned; what the user set in the earlier map stays, with its
   * place brought up to date, and no other kind of field takes that place.
   */
  public NameMap map(NameMap earlier) {
    List<Match> matches = matches(earlier);
    watch.step(0.9);
    Map<String, NameEntry> learned = entries.of(matches, earlier.userChoices().keySet());
    Candidate board =
        matches.stream()
            .filter(match -> match.row().path().equals("board.constant"))
            .map(Match::candidate)
            .findFirst()
            .or(() -> earlier.entry("board.constant").flatMap(this::candidate))
            .orElse(null);
    List<BoardConstant> boards = new BoardLister(texts, mcus).list(board);
    NameMap kept = keepUserChoices(learned, earlier);
    NameMap map =
        BoardFits.of(new NameMap(kept.fields(), boards, targets, earlier.more()), boards, targets);
    watch.step(1);
    return map;
  }

  /** The paths that learning looks for, in their order: one for each axis, axis end and heater. */
  public List<String> paths() {
    return rows.stream().filter(row -> !row.shared()).map(FieldRow::path).toList();
  }

  /** The places of the folder that match what the user types, best first. */
  public List<FoundPlace> find(String typed, int most) {
    return search.find(typed, most);
  }

  /** The place where an entry stands; empty where the folder has none such. */
  public Optional<FoundPlace> place(NameEntry entry) {
    return entry.macro() == null ? Optional.empty() : candidate(entry).map(PlaceSearch::found);
  }

  /**
   * The user's choice of a place for a field, with what its value means there as far as it says.
   */
  public NameEntry choice(String path, FoundPlace place) {
    NameEntry chosen =
        NameEntry.chosen(place.macro(), place.element(), place.file(), place.line())
            .section(place.section());
    Optional<FieldRow> row = rows.stream().filter(one -> one.path().equals(path)).findFirst();
    Optional<Candidate> at = candidate(chosen);
    return row.isEmpty() || at.isEmpty() ? chosen : entries.chosen(chosen, row.get(), at.get());
  }

  private Optional<Candidate> candidate(NameEntry entry) {
    return candidates.stream()
        .filter(one -> one.macro().equals(entry.macro()))
        .filter(one -> java.util.Objects.equals(one.element(), entry.element()))
        .filter(one -> entry.section() == null || entry.section().equals(one.section()))
        .findFirst();
  }

  private Axes axes(List<KeyText> keys) {
    List<String> names = new ArrayList<>();
    List<String> comments = new ArrayList<>();
    for (FolderTexts.Placed placed : texts.settings()) {
      names.add(placed.setting().name());
      comments.add(placed.trailing());
      comments.add(placed.lead());
    }
    keys.forEach(key -> names.add(key.key()));
    return FurtherAxes.of(names, comments);
  }

  /**
   * The kind of contact is looked for among what the polarity leaves: most firmware has one macro
   * for both.
   */
  private List<Match> matches(NameMap earlier) {
    Map<Candidate, LearnableField> chosen = chosen(earlier);
    Set<String> settled = earlier.userChoices().keySet();
    List<Match> matches =
        new ArrayList<>(
            new Matching(
                    index,
                    open(settled, false),
                    scorer,
                    extra,
                    (place, field) ->
                        !chosen.isEmpty() && chosen.getOrDefault(place, field) != field)
                .best());
    watch.step(0.8);
    Set<Candidate> taken = new HashSet<>();
    matches.forEach(match -> taken.add(match.candidate()));
    matches.addAll(
        new Matching(
                index,
                open(settled, true),
                scorer,
                extra,
                (place, field) ->
                    taken.contains(place)
                        || !chosen.isEmpty() && chosen.getOrDefault(place, field) != field)
            .best());
    return matches;
  }

  /** The rows that the user has not settled. */
  private List<FieldRow> open(Set<String> settled, boolean contact) {
    return rows.stream()
        .filter(row -> row.field().path().equals(CONTACT) == contact)
        .filter(row -> !settled.contains(row.path()))
        .toList();
  }

  /** The places that the user gave to a field; no other kind of field takes them. */
  private Map<Candidate, LearnableField> chosen(NameMap earlier) {
    Map<String, FieldRow> byPath = new HashMap<>();
    rows.forEach(row -> byPath.put(row.path(), row));
    Map<Candidate, LearnableField> chosen = new LinkedHashMap<>();
    earlier
        .userChoices()
        .forEach(
            (path, entry) -> {
              FieldRow row = byPath.get(path);
              if (row != null && entry.macro() != null) {
                candidate(entry).ifPresent(place -> chosen.put(place, row.field()));
              }
            });
    return chosen;
  }

  private static List<KeyText> usable(
      List<KeyText> keys, TargetLister lister, List<BuildTarget> targets) {
    List<KeyText> usable = new ArrayList<>();
    for (KeyText key : keys) {
      boolean elsewhere = lister.otherTarget(key, targets);
      boolean fact = lister.inTarget(key, targets) && !key.define();
      if (!elsewhere && !fact) {
        usable.add(key);
      }
    }
    return usable;
  }

  private NameMap keepUserChoices(Map<String, NameEntry> learned, NameMap earlier) {
    Map<String, NameEntry> all = new HashMap<>(learned);
    earlier
        .userChoices()
        .forEach(
            (path, entry) -> {
              Optional<FolderPlace> place = FolderPlace.find(folder, entry);
              NameEntry kept = entry;
              if (place.isPresent() && place.get() instanceof FolderPlace.InHeader header) {
                kept = entry.at(entry.macro(), header.setting().file(), header.setting().line());
              }
              all.put(path, kept);
            });
    Map<String, NameEntry> sorted = new LinkedHashMap<>();
    for (String path : paths()) {
      if (all.containsKey(path)) {
        sorted.put(path, all.remove(path));
      }
    }
    sorted.putAll(all);
    return new NameMap(sorted, null, null, null);
  }
}
