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
 * Learns which macro of a firmware folder carries which profile value. Nothing of any firmware is
 * known beforehand: words of the trade, the shape of values, comments and neighbours decide.
 */
public final class Learner {
  private static final String CONTACT = "endstops.*.contact";

  private final TradeWords trade = TradeWords.read();
  private final List<LearnableField> fields = LearnableField.all();
  private final McuNames mcus;

  /**
   * A learner.
   *
   * @param mcus the microcontrollers that may be named beside boards and targets
   */
  public Learner(McuNames mcus) {
    this.mcus = mcus;
  }

  /** Learns a folder's names from nothing. */
  public NameMap learn(FirmwareFolder folder) {
    return learn(folder, NameMap.EMPTY);
  }

  /**
   * Learns a folder's names anew; what the user set in the earlier map stays, with its place
   * brought up to date.
   */
  public NameMap learn(FirmwareFolder folder, NameMap earlier) {
    FolderTexts texts = FolderTexts.of(folder);
    WordReader words = new WordReader(trade);
    List<KeyText> keys = KeyReader.read(folder);
    TargetLister targetLister = new TargetLister(keys, mcus);
    List<BuildTarget> targets = targetLister.list();
    List<Candidate> candidates =
        new CandidateReader(words, texts).read(usable(keys, targetLister, targets));
    Map<String, Double> extra = new HashMap<>();
    targetLister.chooser().ifPresent(key -> extra.put("board.target " + key.key(), 4.0));
    SwitchFamilies families = new SwitchFamilies(texts, words);
    families.boards().ifPresent(family -> extra.put("board.constant " + family.present(), 1.5));
    families.kinematics().ifPresent(family -> extra.put("kinematics " + family.present(), 2.5));
    Scorer scorer = new Scorer(trade, new ValueShape(texts, mcus), fields);
    List<Match> matches = matches(candidates, scorer, extra);
    Entries entries = new Entries(texts, words, candidates, families);
    Map<String, NameEntry> learned = entries.of(matches, earlier.userChoices().keySet());
    Candidate board =
        matches.stream()
            .filter(match -> match.row().path().equals("board.constant"))
            .map(Match::candidate)
            .findFirst()
            .orElse(null);
    List<BoardConstant> boards = new BoardLister(texts, mcus).list(board);
    NameMap kept = keepUserChoices(learned, earlier, folder);
    return BoardFits.of(
        new NameMap(kept.fields(), boards, targets, earlier.more()), boards, targets);
  }

  /**
   * The kind of contact is looked for among what the polarity leaves: most firmware has one macro
   * for both.
   */
  private List<Match> matches(
      List<Candidate> candidates, Scorer scorer, Map<String, Double> extra) {
    List<LearnableField> first =
        fields.stream().filter(field -> !field.path().equals(CONTACT)).toList();
    List<LearnableField> second =
        fields.stream().filter(field -> field.path().equals(CONTACT)).toList();
    List<Match> matches =
        new ArrayList<>(new Matching(candidates, FieldRow.all(first), scorer, extra).best());
    Set<Candidate> taken = new HashSet<>();
    matches.forEach(match -> taken.add(match.candidate()));
    List<Candidate> left =
        candidates.stream().filter(candidate -> !taken.contains(candidate)).toList();
    matches.addAll(new Matching(left, FieldRow.all(second), scorer, extra).best());
    return matches;
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

  private static NameMap keepUserChoices(
      Map<String, NameEntry> learned, NameMap earlier, FirmwareFolder folder) {
    Map<String, NameEntry> fields = new LinkedHashMap<>(learned);
    earlier
        .userChoices()
        .forEach(
            (path, entry) -> {
              Optional<FolderPlace> place = FolderPlace.find(folder, entry);
              NameEntry kept = entry;
              if (place.isPresent() && place.get() instanceof FolderPlace.InHeader header) {
                kept = entry.at(entry.macro(), header.setting().file(), header.setting().line());
              }
              fields.put(path, kept);
            });
    return new NameMap(fields, null, null, null);
  }
}
