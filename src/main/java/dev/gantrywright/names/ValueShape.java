package dev.gantrywright.names;

import dev.gantrywright.names.LearnableField.Shape;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;

/** How well a value's text fits what a field holds. */
final class ValueShape {
  /** No field of this shape holds such a value. */
  static final double IMPOSSIBLE = -6;

  /** Rates that consoles use: multiples of 300 and 250,000, common practice. */
  private static final Set<Integer> RATES =
      Set.of(
          1200, 2400, 4800, 9600, 14400, 19200, 28800, 38400, 57600, 76800, 115200, 128000, 230400,
          250000, 256000, 460800, 500000, 576000, 921600, 1000000, 1500000, 2000000, 3000000);

  private static final Pattern IDENTIFIER = Pattern.compile("[A-Za-z_]\\w*(::\\w+)*");
  private static final Pattern LEVEL =
      Pattern.compile(
          "(?i)(.*_)?(high|low|hi|lo|inverted|normal|flipped|reversed|forward|nc|no|closed|open|"
              + "true|false|yes|no|on|off|active\\w*|positive|negative|cw|ccw|reverse|straight)(_.*)?");
  private static final Pattern CONTACT =
      Pattern.compile(
          "(?i)(.*_)?(nc|no|nf|na|norm\\w*|closed|open|ferme|ouvert|oeffner|schliesser)(_.*)?");
  private static final Pattern END =
      Pattern.compile(
          "(?i)(.*_)?(min|max|low|high|lowest|highest|lower|upper|left|right|front|back|rear|top|"
              + "bottom|near|far|start|end|neg|pos|minus|plus|down|up|begin)(_.*)?");
  private static final Pattern PIN =
      Pattern.compile(
          "(?i)(p[a-l]_?\\d{1,2}|p\\d[._]\\d{1,2}|gp(io)?_?\\d{1,2}|d\\d{1,2}|pin_?\\w+|\\d{1,3}|\\w*pin\\w*|-1|[a-z]+_?\\d{1,2})");
  private static final Pattern IC = Pattern.compile("\"?(\\w*_)?[A-Za-z]{0,4}\\d{3,5}\\w{0,4}\"?");

  private static final Pattern PORT =
      Pattern.compile("(?i)\\w*(uart|usart|ser|usb|com|port|tty)\\w*");
  private static final Pattern VERSION = Pattern.compile("\"[vV]?[\\d.]+\\w?\"");
  private static final Pattern LETTER = Pattern.compile("'[A-Za-z]'");

  /**
   * A value's text as the shapes look at it, worked out once for every field.
   *
   * @param fits what the shapes that look at the text alone give, by their number; NaN before they
   *     are asked
   */
  private record Read(
      String text, OptionalDouble number, boolean identifier, boolean truth, double[] fits) {}

  private final FolderTexts folder;
  private final McuNames mcus;
  private final Map<String, Read> byText = new HashMap<>();
  private final Read[] read;
  private final Map<LearnableField, Map<String, OptionalDouble>> factors = new HashMap<>();

  /**
   * Looks at a folder's values.
   *
   * @param candidates how many will be looked at
   */
  ValueShape(FolderTexts folder, McuNames mcus, int candidates) {
    this.read = new Read[candidates];
    this.folder = folder;
    this.mcus = mcus;
  }

  /**
   * How well a candidate's value fits.
   *
   * @param at the candidate's place among all
   */
  double fit(Candidate candidate, LearnableField field, int at) {
    if (candidate.bareSwitch()) {
      return switch (field.shape()) {
        case flag -> 0.5 + field.switchBonus();
        case enumeration -> -0.4;
        case end -> 0.2;
        default -> IMPOSSIBLE;
      };
    }
    if (read[at] == null) {
      read[at] = read(candidate);
    }
    return constant(candidate, field) + shape(candidate, field, read[at]);
  }

  private Read read(Candidate candidate) {
    return byText.computeIfAbsent(
        candidate.text(),
        raw -> {
          String text = Parens.off(raw);
          return new Read(
              text,
              Arithmetic.of(text, folder::replacement),
              IDENTIFIER.matcher(text).matches(),
              Truth.of(text).isPresent(),
              unasked());
        });
  }

  private static double[] unasked() {
    double[] fits = new double[Shape.values().length];
    Arrays.fill(fits, Double.NaN);
    return fits;
  }

  /** What stands as another setting's value is one of its choices, not a setting of its own. */
  private double constant(Candidate candidate, LearnableField field) {
    boolean may = field.shape() != Shape.number && field.shape() != Shape.baud && !candidate.key();
    return may && folder.standsAsValue(candidate.macro()) ? -3 : 0;
  }

  private double shape(Candidate candidate, LearnableField field, Read read) {
    String text = read.text();
    OptionalDouble number = read.number();
    return switch (field.shape()) {
      case number -> number(candidate, read, field);
      case flag -> flag(read, field);
      case index, baud, part, driver, contact, pin, sensor -> ofText(field.shape(), read);
      case enumeration -> enumeration(candidate, text, number);
      case text -> text(candidate, text, number);
      case target -> candidate.key() ? 0 : IMPOSSIBLE;
      case end -> end(candidate, text, number);
    };
  }

  private double ofText(Shape shape, Read read) {
    double known = read.fits()[shape.ordinal()];
    if (!Double.isNaN(known)) {
      return known;
    }
    String text = read.text();
    OptionalDouble number = read.number();
    double fit =
        switch (shape) {
          case index -> index(text, number);
          case baud -> baud(number);
          case part -> mcus.find(text).isPresent() ? 2 : IMPOSSIBLE;
          case driver -> driver(text, number);
          case contact -> CONTACT.matcher(text).matches() ? 1.5 : truth(text, number) ? 0 : -3;
          case pin -> pin(text);
          default -> sensor(text, number);
        };
    read.fits()[shape.ordinal()] = fit;
    return fit;
  }

  private double number(Candidate candidate, Read read, LearnableField field) {
    String text = read.text();
    OptionalDouble number = read.number();
    boolean literal = !text.isEmpty() && !read.identifier();
    if (number.isEmpty()) {
      boolean unknownName = read.identifier() && !read.truth();
      return unknownName ? -2 : IMPOSSIBLE;
    }
    double value = number.getAsDouble();
    OptionalDouble factor = factor(field, candidate);
    double own = factor.isPresent() ? value / factor.getAsDouble() : value;
    double fit = literal ? 0.5 : 0.2;
    fit += text.indexOf('.') >= 0 ? 0.1 : 0;
    if (field.range() != null && (value < field.range()[0] || value > field.range()[1])) {
      return value == 0 ? -2 : -4;
    }
    if (field.typical() != null) {
      boolean usual = own >= field.typical()[0] && own <= field.typical()[1];
      boolean asGiven = value >= field.typical()[0] && value <= field.typical()[1];
      fit += usual || asGiven ? 0.5 : -0.7;
    }
    return fit;
  }

  /** How many of the candidate's unit make one of the field's own. */
  OptionalDouble factor(LearnableField field, Candidate candidate) {
    Map<String, OptionalDouble> known = factors.computeIfAbsent(field, key -> new HashMap<>());
    OptionalDouble factor = known.get(candidate.unit());
    if (factor == null) {
      factor = Units.factor(field.unit() == null ? "" : field.unit(), candidate.unit());
      known.put(candidate.unit(), factor);
    }
    return factor;
  }

  private double flag(Read read, LearnableField field) {
    String text = read.text();
    OptionalDouble number = read.number();
    if (text.equals("true") || text.equals("false")) {
      return 0.8;
    }
    if (number.isPresent()) {
      double value = number.getAsDouble();
      if (value == 0 || value == 1) {
        return read.identifier() ? 0.6 : 0.4;
      }
      return value == -1 && !field.perEnd() ? 0.2 : IMPOSSIBLE;
    }
    if (read.truth()) {
      return 0.6;
    }
    return read.identifier() && LEVEL.matcher(text).matches() ? 0.5 : -3.5;
  }

  private static double index(String text, OptionalDouble number) {
    if (number.isEmpty()) {
      return PORT.matcher(text).matches() ? 0.3 : -3;
    }
    double value = number.getAsDouble();
    return value != Math.rint(value) || value < -9 || value > 99
        ? IMPOSSIBLE
        : value <= 9 ? 0.6 : -0.4;
  }

  private static double baud(OptionalDouble number) {
    if (number.isEmpty()) {
      return -4;
    }
    double value = number.getAsDouble();
    boolean usual = value == Math.rint(value) && RATES.contains((int) value);
    return usual ? (value >= 9600 ? 1.8 : 0.8) : value >= 9000 && value <= 4e6 ? -0.2 : IMPOSSIBLE;
  }

  private double enumeration(Candidate candidate, String text, OptionalDouble number) {
    if (text.startsWith("\"")) {
      return -0.5;
    }
    if (LETTER.matcher(text).matches()) {
      return 0.6;
    }
    if (IDENTIFIER.matcher(text).matches()) {
      boolean truth = Truth.of(text).isPresent();
      boolean defined = folder.named(text).isPresent();
      return truth ? -1.5 : defined ? 1.4 : candidate.key() ? 1 : 0.9;
    }
    if (number.isPresent()) {
      return number.getAsDouble() == Math.rint(number.getAsDouble()) ? 0 : -3;
    }
    return candidate.key() ? 0.6 : -2;
  }

  private static double text(Candidate candidate, String text, OptionalDouble number) {
    if (text.startsWith("\"")) {
      return VERSION.matcher(text).matches() ? -1.5 : 1;
    }
    return candidate.key() && number.isEmpty() ? 0.6 : -3;
  }

  private static double driver(String text, OptionalDouble number) {
    if (number.isPresent()) {
      double value = number.getAsDouble();
      return value != Math.rint(value) ? IMPOSSIBLE : value > 1000 ? 0.6 : 0;
    }
    return IC.matcher(text).matches() ? 1.8 : Truth.of(text).isPresent() ? -3 : 0.4;
  }

  private double end(Candidate candidate, String text, OptionalDouble number) {
    if (number.isPresent()) {
      double value = number.getAsDouble();
      boolean named = IDENTIFIER.matcher(text).matches();
      return value == -1 ? 0.7 : value == 1 || value == 0 ? (named ? 0.8 : 0.4) : named ? 0.3 : -4;
    }
    if (END.matcher(text).matches()) {
      return 1;
    }
    return Truth.of(text).isPresent() ? 0.2 : -1.5;
  }

  private static double pin(String text) {
    return PIN.matcher(text).matches() && Truth.of(text).isEmpty()
        ? 0.8
        : text.matches("\\d") ? 0.2 : IDENTIFIER.matcher(text).matches() ? -0.2 : -4;
  }

  private static double sensor(String text, OptionalDouble number) {
    if (number.isPresent()) {
      return number.getAsDouble() == Math.rint(number.getAsDouble()) ? 0.4 : -3;
    }
    return Truth.of(text).isPresent() ? -3 : 0.6;
  }

  private static boolean truth(String text, OptionalDouble number) {
    return Truth.of(text).isPresent()
        || (number.isPresent() && (number.getAsDouble() == 0 || number.getAsDouble() == 1));
  }
}
