package dev.gantrywright.names;

import dev.gantrywright.names.WordReader.Word;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Works out what a yes-or-no value says of an endstop or a motor. */
final class MeaningReader {
  /** A meaning with the spellings that go with it, and whence it was learned. */
  record Found(Meaning meaning, Map<String, String> values, String why) {}

  private static final Pattern HIGH =
      Pattern.compile("(?i)(.*_)?(high|hi|hoch|haut|alto)(_.*)?|.*[a-z]High");
  private static final Pattern LOW =
      Pattern.compile("(?i)(.*_)?(low|lo|bas|bajo|tief|niedrig|basso)(_.*)?|.*[a-z]Low");

  private static final Pattern LEVEL_END =
      Pattern.compile("low|high|lo|hi|bas|haut|bajo|alto|basso");
  private static final Pattern OTHER_END =
      Pattern.compile(
          "min|max|minimum|maximum|mn|mx|left|right|front|back|rear|top|bottom|near|far|lower|upper|"
              + "unten|oben|mini|maxi|lowest|highest|minimo|maximo|start|end");

  private final FolderTexts folder;
  private final Alternatives alternatives;

  MeaningReader(FolderTexts folder) {
    this.folder = folder;
    this.alternatives = new Alternatives(folder);
  }

  /** The sense of an endstop's setting. */
  Found endstop(Candidate candidate, List<Candidate> siblings) {
    String text = Parens.off(candidate.text());
    String name = name(candidate);
    if (text.matches("(?i)n[oc]")) {
      boolean pair =
          text.equalsIgnoreCase("nc")
              || name.contains("contact")
              || candidate.comment().matches("(?is).*\\bnc\\b.*")
              || siblings.stream()
                  .anyMatch(sibling -> Parens.off(sibling.text()).equalsIgnoreCase("nc"));
      if (pair) {
        return found(Meaning.CONTACT, "the value is a kind of contact");
      }
    }
    Optional<Found> constants = byConstants(candidate, siblings, true);
    if (constants.isPresent()) {
      return constants.get();
    }
    Map<String, String> clauses = clauses(candidate);
    Optional<Meaning> byYes = Clauses.yes(clauses).flatMap(Polarity::ofTrue);
    Optional<Meaning> byNo =
        Clauses.no(clauses).flatMap(Polarity::ofTrue).map(MeaningReader::opposite);
    Optional<Meaning> byComment = byYes.or(() -> byNo);
    boolean level = HIGH.matcher(text).matches() || LOW.matcher(text).matches();
    if (level) {
      boolean rest =
          Polarity.rest(name)
              || Polarity.rest(candidate.comment())
                  && !name.matches(".*(press|hit|trigger|active|touch).*");
      Meaning meaning = rest ? Meaning.IDLE_LEVEL : Meaning.ACTIVE_LEVEL;
      return found(meaning, "the value is a level");
    }
    if (byComment.isPresent()) {
      return found(named(byComment.get(), name), "comment: " + firstLine(candidate.comment()));
    }
    Optional<Meaning> byName = Polarity.ofTrue(name);
    if (byName.isPresent() && byName.get() != Meaning.NOT_INVERTED || name.contains("not invert")) {
      return found(byName.get(), "its name");
    }
    boolean speaksOfLevel =
        name.matches(
            ".*\\b(level|polarity|pol|logic|active|pegel|niveau|nivel|polaritat|polarite|polaridad)\\b.*");
    if (speaksOfLevel && (text.equals("0") || text.equals("1"))) {
      Meaning meaning = Polarity.rest(name) ? Meaning.IDLE_LEVEL : Meaning.ACTIVE_LEVEL;
      return found(meaning, "its name speaks of a level, the value is 0 or 1");
    }
    Optional<Meaning> loose = Polarity.ofTrue(candidate.comment());
    if (loose.isPresent() && loose.get() != Meaning.NOT_INVERTED) {
      return found(loose.get(), "comment: " + firstLine(candidate.comment()));
    }
    return new Found(Meaning.UNKNOWN, Map.of(), "neither name nor comment says what true means");
  }

  /** The sense of a motor's direction setting. */
  Found direction(Candidate candidate, List<Candidate> siblings) {
    String text = Parens.off(candidate.text());
    OptionalDouble number = Arithmetic.of(text, folder::replacement);
    boolean sign =
        number.isPresent() && number.getAsDouble() == -1
            || siblings.stream()
                .map(sibling -> Arithmetic.of(sibling.text(), folder::replacement))
                .anyMatch(value -> value.isPresent() && value.getAsDouble() == -1);
    Optional<Found> constants = byConstants(candidate, siblings, false);
    if (constants.isPresent()) {
      return constants.get();
    }
    if (sign) {
      return found(Meaning.SIGN, "values of -1 and 1");
    }
    Map<String, String> clauses = clauses(candidate);
    Optional<Meaning> byYes = Clauses.yes(clauses).flatMap(MeaningReader::turn);
    Optional<Meaning> byNo =
        Clauses.no(clauses).flatMap(MeaningReader::turn).map(MeaningReader::opposite);
    Optional<Meaning> byComment = byYes.or(() -> byNo);
    if (byComment.isPresent()) {
      return found(byComment.get(), "comment: " + firstLine(candidate.comment()));
    }
    Optional<Meaning> byName = turn(name(candidate));
    if (byName.isPresent()) {
      return found(byName.get(), "its name");
    }
    Optional<Meaning> loose = turn(candidate.comment());
    return loose
        .map(meaning -> found(meaning, "comment: " + firstLine(candidate.comment())))
        .orElseGet(
            () ->
                new Found(
                    Meaning.UNKNOWN, Map.of(), "neither name nor comment says what true means"));
  }

  private static Optional<Meaning> turn(String text) {
    Optional<Meaning> meaning = Polarity.ofTrue(text);
    return meaning.filter(found -> found == Meaning.INVERTED || found == Meaning.NOT_INVERTED);
  }

  /** Two constants that say opposite things, one of which stands there. */
  private Optional<Found> byConstants(
      Candidate candidate, List<Candidate> siblings, boolean endstop) {
    String text = Parens.off(candidate.text());
    if (!text.matches("[A-Za-z_]\\w*")
        || Truth.of(text).isPresent()
            && !text.matches("(?i)inverted|normal|reverse|forward|reversed")) {
      return Optional.empty();
    }
    Map<String, String> said = alternatives.of(candidate, siblings);
    String yes = null;
    String no = null;
    Meaning meaning = null;
    for (Map.Entry<String, String> one : said.entrySet()) {
      Optional<Meaning> sense = constant(one.getKey(), one.getValue(), endstop);
      if (sense.isEmpty()) {
        continue;
      }
      boolean inverted = sense.get().trueSaysInverted();
      yes = inverted && yes == null ? one.getKey() : yes;
      no = !inverted && no == null ? one.getKey() : no;
      if (one.getKey().equals(text)) {
        meaning = sense.get();
        yes = inverted ? text : yes;
        no = inverted ? no : text;
      }
    }
    if (meaning == null) {
      return Optional.empty();
    }
    Map<String, String> values = new LinkedHashMap<>();
    if (yes != null) {
      values.put("true", yes);
    }
    if (no != null) {
      values.put("false", no);
    }
    return Optional.of(
        new Found(
            kind(meaning, candidate),
            values,
            "the constants " + String.join(", ", values.values())));
  }

  private static Meaning kind(Meaning meaning, Candidate candidate) {
    return switch (meaning) {
      case NORMALLY_CLOSED, NORMALLY_OPEN, CONTACT -> Meaning.CONTACT;
      case ACTIVE_LOW, ACTIVE_HIGH ->
          Polarity.rest(name(candidate)) ? Meaning.IDLE_LEVEL : Meaning.ACTIVE_LEVEL;
      default -> Meaning.INVERTED;
    };
  }

  /** What one constant says, by its own name first. */
  private static Optional<Meaning> constant(String constant, String said, boolean endstop) {
    String name = said.substring(0, Math.max(0, said.indexOf(" | ")));
    String words = name.isEmpty() ? constant : name;
    if (endstop) {
      String plain = " " + words + " ";
      if (plain.matches(".*\\b(nc|nf|closed|opener|oeffner|offner|breaks?)\\b.*")) {
        return Optional.of(Meaning.NORMALLY_CLOSED);
      }
      if (plain.matches(".*\\b(no|na|open|closer|schliesser|makes?)\\b.*")) {
        return Optional.of(Meaning.NORMALLY_OPEN);
      }
    }
    Optional<Meaning> byName = Polarity.ofTrue(words);
    Optional<Meaning> byText = Polarity.ofTrue(said.substring(words.length()));
    if (endstop
        && byName.isPresent()
        && byText.isPresent()
        && levels(byText.get())
        && !levels(byName.get())) {
      return byName.get().trueSaysInverted() == byText.get().trueSaysInverted() ? byName : byText;
    }
    return byName.or(() -> byText).filter(meaning -> endstop || !levels(meaning));
  }

  private static boolean levels(Meaning meaning) {
    return meaning == Meaning.ACTIVE_LOW || meaning == Meaning.ACTIVE_HIGH;
  }

  /** Where the comment explains a level but the name says invert, the name's word is kept. */
  private static Meaning named(Meaning byComment, String name) {
    Optional<Meaning> byName = Polarity.ofTrue(name);
    boolean same =
        byName.isPresent() && byName.get().trueSaysInverted() == byComment.trueSaysInverted();
    return same ? byName.get() : byComment;
  }

  private static Meaning opposite(Meaning meaning) {
    return switch (meaning) {
      case INVERTED -> Meaning.NOT_INVERTED;
      case NOT_INVERTED -> Meaning.INVERTED;
      case ACTIVE_LOW -> Meaning.ACTIVE_HIGH;
      case ACTIVE_HIGH -> Meaning.ACTIVE_LOW;
      case NORMALLY_CLOSED -> Meaning.NORMALLY_OPEN;
      case NORMALLY_OPEN -> Meaning.NORMALLY_CLOSED;
      default -> meaning;
    };
  }

  private static Found found(Meaning meaning, String why) {
    return new Found(meaning, Map.of(), why);
  }

  private static Map<String, String> clauses(Candidate candidate) {
    return Clauses.of(candidate.comment());
  }

  /** The words of the name; a low or high that tells the end of the axis is left out. */
  private static String name(Candidate candidate) {
    List<String> all = candidate.words().stream().map(Word::text).toList();
    boolean otherEnd = all.stream().anyMatch(word -> OTHER_END.matcher(word).matches());
    if (otherEnd || candidate.element() != null) {
      return String.join(" ", all);
    }
    return String.join(
        " ", all.stream().filter(word -> !LEVEL_END.matcher(word).matches()).toList());
  }

  private static String firstLine(String comment) {
    return comment
        .lines()
        .map(String::strip)
        .filter(line -> !line.isEmpty())
        .findFirst()
        .orElse("");
  }
}
