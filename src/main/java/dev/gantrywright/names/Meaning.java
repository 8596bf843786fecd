package dev.gantrywright.names;

import java.util.Locale;
import java.util.Optional;

/**
 * What a macro's value says where it is not the profile field's own value.
 *
 * <p>Endstops and motor directions have one profile value, {@code inverted}; firmware spells it as
 * inversion, as the level that counts as touched, or as the kind of contact. A contact is taken as
 * standing between the input and ground with a pull-up, the usual wiring (common practice, no
 * published source): closed at rest reads high when touched, which is {@code inverted: false}.
 */
public enum Meaning {
  /** True says inverted. */
  INVERTED("inverted", true),
  /** True says not inverted. */
  NOT_INVERTED("not-inverted", false),
  /** True says that the low level counts as touched. */
  ACTIVE_LOW("active-low", true),
  /** True says that the high level counts as touched. */
  ACTIVE_HIGH("active-high", false),
  /** The value is the level that counts as touched: high (1) or low (0). */
  ACTIVE_LEVEL("active-level", false),
  /** True says that the contact is closed at rest. */
  NORMALLY_CLOSED("normally-closed", false),
  /** True says that the contact is open at rest. */
  NORMALLY_OPEN("normally-open", true),
  /** The value is the level at rest: high (1) or low (0). */
  IDLE_LEVEL("idle-level", true),
  /** The value names the contact: NO or NC. */
  CONTACT("contact", true),
  /** The value is a sign: -1 or 1. */
  SIGN("sign", true),
  /** The folder does not say; a touch at the machine settles it. */
  UNKNOWN("unknown", true);

  private final String word;
  private final boolean trueSaysInverted;

  Meaning(String word, boolean trueSaysInverted) {
    this.word = word;
    this.trueSaysInverted = trueSaysInverted;
  }

  /** As name maps spell it. */
  public String word() {
    return word;
  }

  /** Whether a true (on, 1, high) in the folder is a true in the profile. */
  public boolean trueSaysInverted() {
    return trueSaysInverted;
  }

  /** The meaning that a name map's word stands for; empty for a unit or an unknown word. */
  public static Optional<Meaning> of(String word) {
    if (word == null) {
      return Optional.empty();
    }
    String plain = word.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('_', '-');
    for (Meaning meaning : values()) {
      if (meaning.word.equals(plain)) {
        return Optional.of(meaning);
      }
    }
    return Optional.empty();
  }
}
