package dev.gantrywright.names;

import java.util.Optional;
import java.util.regex.Pattern;

/** What a piece of text says of an endstop's or a motor's sense. */
final class Polarity {
  private static final Pattern NOT =
      Pattern.compile(
          "\\b(not|non|nicht|un|no|ne|pas|nie|never|without)[ _-]*(invert|inver|flip|revers|umge|invers|turn)");
  private static final Pattern CLOSED =
      Pattern.compile(
          "\\bnc\\b|\\bnf\\b|normal(ly|ement|mente)?[ _-]*(closed|ferme|cerrado|chiuso|geschlossen)|opens (when|on|if)|\\bbreaks\\b|"
              + "\\boeffner\\b|\\boffner\\b|ruhekontakt|closed at rest|geschlossen|\\bopener\\b|interrupts|contact closed|ferme au repos");
  private static final Pattern OPEN =
      Pattern.compile(
          "\\bno\\b(?! |$)|\\bn\\.o\\b|normal(ly|ement|mente)?[ _-]*(open|ouvert|abierto|aperto|offen)|closes (when|on|if)|\\bmakes\\b|"
              + "schliesser|arbeitskontakt|open at rest|contact open|ouvert au repos");
  private static final Pattern LOW =
      Pattern.compile(
          "\\b(low|lo|gnd|ground|masse|bas|bajo|basso|niedrig|0 ?v|tief|terre|active ?low|low ?active)\\b");
  private static final Pattern HIGH =
      Pattern.compile("\\b(high|hi|haut|alto|hoch|3v3|5v|vcc|active ?high|high ?active)\\b");
  private static final Pattern REST =
      Pattern.compile(
          "\\b(idle|at rest|rest|untouched|released|ruhe|repos|reposo|riposo|not (pressed|touched|hit)|unpressed|free|clear)\\b");
  private static final Pattern INVERT =
      Pattern.compile(
          "invert|flip|revers|umgek|invers|\\bother way|\\bopposite|negat|backward|gedreht|turned|mirror|\\bneg\\b|umkehr|\\brev\\b|\\binv\\b");
  private static final Pattern NORMAL =
      Pattern.compile(
          "\\b(normal|straight|as is|plain|forward|unchanged|direct|positive|true logic)\\b");

  private Polarity() {}

  /**
   * The meaning that a true value has where this is what true says; empty where it says nothing.
   */
  static Optional<Meaning> ofTrue(String text) {
    String plain = Folded.text(text).replace('_', ' ');
    if (NOT.matcher(plain).find()) {
      return Optional.of(Meaning.NOT_INVERTED);
    }
    boolean closed = CLOSED.matcher(plain).find();
    boolean open = OPEN.matcher(plain).find();
    if (closed != open) {
      return Optional.of(closed ? Meaning.NORMALLY_CLOSED : Meaning.NORMALLY_OPEN);
    }
    boolean low = LOW.matcher(plain).find();
    boolean high = HIGH.matcher(plain).find();
    if (low != high) {
      boolean rest = REST.matcher(plain).find();
      return Optional.of(low != rest ? Meaning.ACTIVE_LOW : Meaning.ACTIVE_HIGH);
    }
    if (INVERT.matcher(plain).find()) {
      return Optional.of(Meaning.INVERTED);
    }
    return NORMAL.matcher(plain).find() ? Optional.of(Meaning.NOT_INVERTED) : Optional.empty();
  }

  static boolean rest(String text) {
    return REST.matcher(Folded.text(text).replace('_', ' ')).find();
  }
}
