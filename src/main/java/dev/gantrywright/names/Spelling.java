package dev.gantrywright.names;

import dev.gantrywright.header.StringLiteral;
import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.FieldType;
import dev.gantrywright.machine.Fields;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.DoubleNode;
import tools.jackson.databind.node.IntNode;
import tools.jackson.databind.node.StringNode;

/**
 * How one field's values are spelled in one folder: reads the folder's text as a profile value and
 * spells a profile value as the folder's text. Both ways agree: what is spelled is read back.
 */
public final class Spelling {
  /** Parts of a whole count as equal where they differ by less than this share. */
  private static final double SAME = 1e-9;

  private static final Pattern WORD_OR_WHOLE = Pattern.compile("[A-Za-z_]\\w*|[-+]?\\d+");

  private final String path;
  private final NameEntry entry;
  private final Function<String, Optional<String>> macros;
  private final FieldType type;
  private final String ownUnit;

  /**
   * Made for one field.
   *
   * @param macros the replacement of a macro of the folder, empty where it has none
   */
  public Spelling(String path, NameEntry entry, Function<String, Optional<String>> macros) {
    this.path = path;
    this.entry = entry;
    this.macros = macros;
    Optional<Field> field = Fields.at(path);
    this.type = field.map(Field::type).orElse(FieldType.TEXT);
    this.ownUnit = field.map(Field::unit).orElse("");
  }

  /** What a bare {@code #define} says that is on or off. */
  public Optional<JsonNode> readSwitch(boolean on) {
    Optional<JsonNode> listed = listed(on ? "on" : "off");
    if (listed.isPresent()) {
      return listed;
    }
    return type == FieldType.FLAG ? Optional.of(flag(on == trueIsTrue())) : Optional.empty();
  }

  /** The profile value that a text stands for; empty where the map does not tell. */
  public Optional<JsonNode> read(String text) {
    String body = text.strip();
    Optional<JsonNode> listed = listed(body);
    if (listed.isPresent()) {
      return listed;
    }
    if (body.isEmpty()) {
      return Optional.empty();
    }
    return switch (type) {
      case FLAG -> truth(body).map(is -> flag(is == trueIsTrue()));
      case NUMBER, INTEGER -> number(body).map(Spelling::numberNode);
      case CHOICE -> choice(body);
      default -> Optional.of(StringNode.valueOf(unquoted(body)));
    };
  }

  /**
   * How a profile value is to stand where a text stands now.
   *
   * @param current the text of the macro or of the element; empty for a bare switch
   */
  public Spelled spell(JsonNode value, String current) {
    String body = current.strip();
    if (!body.isEmpty() && read(body).filter(now -> same(now, value)).isPresent()) {
      return new Spelled.AlreadySo();
    }
    String listed = entry.values().get(word(value));
    if (listed != null) {
      return listed(listed, body);
    }
    if (Meaning.of(entry.meaning()).filter(Meaning.UNKNOWN::equals).isPresent()) {
      return new Spelled.Not(
          "the folder does not say what "
              + entry.macro()
              + " means; settle it with the touch test or choose its meaning in the name map");
    }
    if (value.isBoolean()) {
      return truth(value.booleanValue(), body);
    }
    return value.isNumber() ? number(value.doubleValue(), body) : text(value.asString(), body);
  }

  private static Spelled listed(String text, String current) {
    if (current.isEmpty() && text.equals("on")) {
      return new Spelled.On();
    }
    if (text.equals("off") && (current.isEmpty() || !current.equalsIgnoreCase("on"))) {
      return new Spelled.Off();
    }
    return new Spelled.Text(text);
  }

  private Spelled truth(boolean value, String current) {
    boolean wanted = value == trueIsTrue();
    if (current.isEmpty()) {
      return wanted ? new Spelled.On() : new Spelled.Off();
    }
    Optional<Meaning> meaning = Meaning.of(entry.meaning());
    if (meaning.filter(Meaning.CONTACT::equals).isPresent()) {
      String word = value ? "NO" : "NC";
      return current.matches("(?i)n[oc]")
          ? new Spelled.Text(
              current.equals(current.toLowerCase(Locale.ROOT))
                  ? word.toLowerCase(Locale.ROOT)
                  : word)
          : notSpelled(word);
    }
    boolean sign = meaning.filter(Meaning.SIGN::equals).isPresent();
    return Truth.like(current, wanted, sign)
        .<Spelled>map(Spelled.Text::new)
        .orElseGet(() -> notSpelled(String.valueOf(value)));
  }

  private Spelled number(double value, String current) {
    OptionalDouble factor = Units.factor(ownUnit, entry.unit());
    if (factor.isEmpty()) {
      return new Spelled.Not(
          entry.macro() + " is in " + entry.unit() + ", which does not measure " + ownUnit);
    }
    double scaled = value * factor.getAsDouble();
    if (current.startsWith("\"")) {
      return new Spelled.Text("\"" + NumberSpelling.digits(scaled) + "\"");
    }
    return new Spelled.Text(NumberSpelling.like(current, scaled));
  }

  private Spelled text(String value, String current) {
    if (value.indexOf('\n') >= 0 || value.indexOf('\r') >= 0) {
      return new Spelled.Not("the value has several lines, which a macro cannot hold");
    }
    if (current.startsWith("\"")) {
      return new Spelled.Text(StringLiteral.of(value));
    }
    if (type == FieldType.CHOICE || !WORD_OR_WHOLE.matcher(value).matches()) {
      return notSpelled(value);
    }
    return new Spelled.Text(value);
  }

  private Spelled notSpelled(String value) {
    return new Spelled.Not("the name map does not say how " + entry.macro() + " spells " + value);
  }

  private Optional<JsonNode> listed(String text) {
    for (Map.Entry<String, String> pair : entry.values().entrySet()) {
      if (pair.getValue().equals(text) || equalNumbers(pair.getValue(), text)) {
        return Optional.of(typed(pair.getKey()));
      }
    }
    return Optional.empty();
  }

  private boolean equalNumbers(String a, String b) {
    OptionalDouble left = Arithmetic.of(a);
    OptionalDouble right = Arithmetic.of(b);
    return left.isPresent() && right.isPresent() && left.getAsDouble() == right.getAsDouble();
  }

  private JsonNode typed(String word) {
    return switch (type) {
      case FLAG -> flag(word.equals("true"));
      case NUMBER, INTEGER ->
          Arithmetic.of(word).isPresent()
              ? numberNode(Arithmetic.of(word).getAsDouble())
              : StringNode.valueOf(word);
      default -> StringNode.valueOf(word);
    };
  }

  private Optional<Boolean> truth(String text) {
    Optional<Meaning> meaning = Meaning.of(entry.meaning());
    if (meaning.filter(Meaning.CONTACT::equals).isPresent()) {
      return contact(text);
    }
    if (meaning.filter(Meaning.SIGN::equals).isPresent()) {
      OptionalDouble sign = Arithmetic.of(text, macros);
      return sign.isPresent() && sign.getAsDouble() != 0
          ? Optional.of(sign.getAsDouble() < 0)
          : Optional.empty();
    }
    return Truth.of(text).or(() -> macros.apply(text).flatMap(Truth::of));
  }

  /** Whether the contact is open at rest. */
  private static Optional<Boolean> contact(String text) {
    String plain = "_" + text.toLowerCase(Locale.ROOT) + "_";
    boolean closed = plain.contains("_nc_") || plain.contains("closed");
    boolean open = plain.contains("_no_") || plain.contains("open");
    return closed == open ? Optional.empty() : Optional.of(open);
  }

  private Optional<Double> number(String text) {
    OptionalDouble factor = Units.factor(ownUnit, entry.unit());
    OptionalDouble value = Arithmetic.of(text.startsWith("\"") ? unquoted(text) : text, macros);
    return factor.isPresent() && value.isPresent()
        ? Optional.of(value.getAsDouble() / factor.getAsDouble())
        : Optional.empty();
  }

  private Optional<JsonNode> choice(String text) {
    String plain = unquoted(text);
    return Fields.at(path)
        .flatMap(field -> field.choices().stream().filter(plain::equalsIgnoreCase).findFirst())
        .map(StringNode::valueOf);
  }

  private boolean trueIsTrue() {
    return Meaning.of(entry.meaning()).map(Meaning::trueSaysInverted).orElse(true);
  }

  private static boolean same(JsonNode a, JsonNode b) {
    if (a.isNumber() && b.isNumber()) {
      double left = a.doubleValue();
      double right = b.doubleValue();
      return Math.abs(left - right) <= SAME * Math.max(Math.abs(left), Math.abs(right));
    }
    return a.equals(b);
  }

  private static String word(JsonNode value) {
    return value.isNumber() ? NumberSpelling.digits(value.doubleValue()) : value.asString();
  }

  private static JsonNode flag(boolean value) {
    return BooleanNode.valueOf(value);
  }

  private static JsonNode numberNode(double value) {
    return value == Math.rint(value) && Math.abs(value) < Integer.MAX_VALUE
        ? IntNode.valueOf((int) value)
        : DoubleNode.valueOf(Double.parseDouble(NumberSpelling.digits(value)));
  }

  private static String unquoted(String text) {
    String plain = StringLiteral.text(text);
    return plain == null ? text : plain;
  }
}
